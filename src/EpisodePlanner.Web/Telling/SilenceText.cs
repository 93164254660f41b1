using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Telling;

/// <summary>The silences beyond promises, the most urgent first, with what causes them.</summary>
internal static class SilenceText
{
    private const int MostSteps = 5;

    public static void Write(ISheet page, PlanAdvice advice, PlanNames names, ChainText chains)
    {
        var plan = advice.Plan;
        page.Heading("Silences beyond a promise");
        var alarming = SilencesAhead.Of(plan);
        foreach (var outlook in alarming)
        {
            WriteAlarms(page, advice, outlook, names, chains);
        }

        if (alarming.Count == 0)
        {
            page.Paragraph("None, as far as uploads are planned.");
        }

        QuietText.Write(page, plan, names);
    }

    private static void WriteAlarms(ISheet page, PlanAdvice advice, Outlook outlook, PlanNames names, ChainText chains)
    {
        var (plan, first) = (advice.Plan, outlook.Alarms[0]);
        page.Item(SilenceWords.First(outlook, first, plan, names));
        if (plan.Episodes.FirstOrDefault(e => e.Id == first.Episode && first.Episode is not null) is { } episode)
        {
            chains.Write(episode, MostSteps);
        }

        if (advice.Foreseen.TryGetValue(outlook.Series, out var since))
        {
            page.Below(SilenceWords.Foreseen(since, names));
        }

        var again = outlook.Alarms.Skip(1).Where(a => a.Ends != first.Ends).ToList();
        if (again.Count > 0)
        {
            page.Below($"Then again: {string.Join("; ", again.Select(a => SilenceWords.Again(a, plan, names)))}.");
        }
    }
}
