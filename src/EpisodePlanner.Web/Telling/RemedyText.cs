using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Silences beyond promises with what can be done about each.</summary>
internal static class RemedyText
{
    private const int MostSteps = 5;
    private const int MostRemedies = 12;

    /// <summary>One silence.</summary>
    public static void Write(ISheet page, SilenceRemedies about)
    {
        var words = new RemedyWords(about);
        page.Heading(SilenceWords.Capital(about.Outlook.Name));
        page.Paragraph($"{words.First}{(about.Foreseen is { } since ? $" {SilenceWords.Foreseen(since, words.Names)}" : "")}");
        if (about.Plan.Episodes.FirstOrDefault(episode => episode.Id == about.Alarm.Episode) is { } episode)
        {
            new ChainText(page, about.Plan).Write(episode, MostSteps);
        }

        foreach (var remedy in about.Helping.Take(MostRemedies))
        {
            page.Item($"If {remedy.Says}: {RemedyWords.Wins(remedy)}; it costs {RemedyWords.Costs(remedy)}.");
            foreach (var caution in remedy.Cautions)
            {
                page.Below(CautionWords.Of(caution));
            }
        }

        foreach (var line in new[] { words.Nothing, words.Notice is { } notice ? $"A word to supporters: “{notice}”" : null, words.Rest }.OfType<string>())
        {
            page.Paragraph(line);
        }

        if (about.InVain.Count > 0)
        {
            page.Paragraph($"Tried without winning a day: {string.Join("; ", about.InVain)}.");
        }
    }
}
