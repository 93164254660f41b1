using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>What a blocker has to name, and what relaxing it means.</summary>
internal static class BlockerRules
{
    /// <summary>What is wrong with a blocker of a stage; null for nothing.</summary>
    public static string? Check(BenchProblem problem, int stage, Blocker blocker) => blocker.Kind switch
    {
        CauseKind.Predecessor => IsGlue(problem, stage, blocker) ? null : CheckLink(problem, stage, blocker),
        CauseKind.StationHeld or CauseKind.AcceptedOrder => CheckHolder(problem, stage, blocker),
        CauseKind.ClosedHours => CheckHours(problem, blocker),
        CauseKind.GreatestLag => CheckGreatestLag(problem, stage, blocker),
        _ => null,
    };

    /// <summary>Whether the blocker is the stage to which a wait is glued, told without a link.</summary>
    public static bool IsGlue(BenchProblem problem, int stage, Blocker blocker) =>
        blocker is { Kind: CauseKind.Predecessor, Link: -1 }
        && blocker.Stage >= 0 && problem.Stages[stage].GluedTo == blocker.Stage;

    public static Relaxation Relax(IReadOnlyList<Blocker> blockers)
    {
        bool Has(CauseKind kind) => blockers.Any(b => b.Kind == kind);
        IEnumerable<Blocker> Of(CauseKind kind) => blockers.Where(b => b.Kind == kind);
        return new Relaxation
        {
            Links = Of(CauseKind.Predecessor).Select(b => b.Link).ToHashSet(),
            GreatestLags = Of(CauseKind.GreatestLag).Select(b => b.Link).ToHashSet(),
            Held = Of(CauseKind.StationHeld).Concat(Of(CauseKind.AcceptedOrder)).Select(b => (b.Stage, b.Station)).ToHashSet(),
            Stations = Of(CauseKind.ClosedHours).Select(b => b.Station).ToHashSet(),
            Limits = Of(CauseKind.ClosedHours).Select(b => b.Limit).ToHashSet(),
            Presence = Has(CauseKind.Presence),
            MinimumBlock = Has(CauseKind.MinimumBlock),
            SettingUp = Has(CauseKind.SettingUp),
            Date = Has(CauseKind.Date),
        };
    }

    private static string? CheckLink(BenchProblem problem, int stage, Blocker blocker)
    {
        if (blocker.Link < 0 || blocker.Link >= problem.Links.Count)
            return "a predecessor without a link";

        var link = problem.Links[blocker.Link];
        return link.From == blocker.Stage && Followers.Group(problem, stage).Contains(link.To)
            ? null
            : $"link {blocker.Link} does not lead here from stage {blocker.Stage}";
    }

    private static string? CheckGreatestLag(BenchProblem problem, int stage, Blocker blocker)
    {
        if (blocker.Link < 0 || blocker.Link >= problem.Links.Count)
            return "a greatest lag without a link";

        var link = problem.Links[blocker.Link];
        return link.To == blocker.Stage && Followers.Group(problem, stage).Contains(link.From) && GreatestLags.Binds(problem, link)
            ? null
            : $"link {blocker.Link} has no greatest lag that leads from here to stage {blocker.Stage}";
    }

    private static string? CheckHolder(BenchProblem problem, int stage, Blocker blocker)
    {
        if (blocker.Stage < 0 || blocker.Stage >= problem.Stages.Count || blocker.Stage == stage)
            return "a held station without another stage that holds it";

        return blocker.Station < 0 || blocker.Station >= problem.Stations.Count ? "a held station without a station" : null;
    }

    private static string? CheckHours(BenchProblem problem, Blocker blocker)
    {
        var station = blocker.Station >= 0 && blocker.Station < problem.Stations.Count;
        var limit = blocker.Limit >= 0 && blocker.Limit < problem.Limits.Count;
        return station != limit ? null : "closed hours without one station or one limit";
    }
}
