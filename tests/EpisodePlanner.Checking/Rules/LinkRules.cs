using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Stages wait for each other as the links say.</summary>
internal static class LinkRules
{
    public static void Check(Findings findings)
    {
        foreach (var link in findings.Problem.Links)
        {
            if (!findings.Schedule.IsPlaced(link.To) || findings.Problem.Stages[link.To].Begun)
                continue;

            if (!findings.Schedule.IsPlaced(link.From))
                findings.Add(link.To, $"is placed although '{Name(findings, link.From)}', for which it waits, is not");
            else
                CheckLeast(findings, link);
        }

        GreatestLags.Check(findings, binding: true);
    }

    /// <summary>The two moments that a link compares.</summary>
    public static (int From, int To) Ends(BenchSchedule schedule, BenchLink link) => (
        LeavesFromStart(link.Kind) ? schedule.Start(link.From) : schedule.Finish(link.From),
        ArrivesAtStart(link.Kind) ? schedule.Start(link.To) : schedule.Finish(link.To));

    public static bool LeavesFromStart(LinkKind kind) => kind is LinkKind.TogetherStart or LinkKind.StartToFinish;

    public static bool ArrivesAtStart(LinkKind kind) => kind is LinkKind.After or LinkKind.TogetherStart;

    private static void CheckLeast(Findings findings, BenchLink link)
    {
        var (from, to) = Ends(findings.Schedule, link);
        var least = findings.Hours.Lag(link, from);
        if (least is null || to < least)
        {
            var when = least is null ? "never" : $"not before {least}";
            findings.Add(link.To, $"{Verb(link.Kind)} at {to}; '{Name(findings, link.From)}' allows it {when}");
        }
    }

    public static string Verb(LinkKind kind) => ArrivesAtStart(kind) ? "starts" : "finishes";

    private static string Name(Findings findings, int stage) => findings.Problem.Stages[stage].Name;
}
