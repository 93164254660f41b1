using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The earliest start and finish that dates, the links from placed stages and the greatest lags to placed ones leave.</summary>
/// <param name="Start">Not before this; null for never.</param>
/// <param name="Finish">Finished not before this; null for never.</param>
internal readonly record struct Bounds(int? Start, int? Finish)
{
    public static Bounds Of(Surroundings around, int stage)
    {
        var about = around.Problem.Stages[stage];
        var bounds = new Bounds(about.Begun || around.Relaxed.Date ? 0 : about.NotBefore, 0);
        if (about.Begun)
            return bounds;

        for (var l = 0; l < around.Problem.Links.Count; l++)
        {
            var link = around.Problem.Links[l];
            if (link.To == stage && !around.Relaxed.Links.Contains(l) && around.Placed(link.From) is { Length: > 0 } from)
                bounds = bounds.With(LinkRules.ArrivesAtStart(link.Kind), around.Lag(link, Leaves(link, from)));
            if (link.From == stage && GreatestLags.Binds(around.Problem, link) && !around.Relaxed.GreatestLags.Contains(l)
                && around.Placed(link.To) is { Length: > 0 } to)
                bounds = bounds.With(LinkRules.LeavesFromStart(link.Kind), Arrives(link, to) - link.AtMost);
        }

        return bounds;
    }

    /// <summary>Whether the links from a stage so placed to the placed stages hold.</summary>
    public static bool AllowAfter(Surroundings around, int stage, SchedulePart[] parts)
    {
        foreach (var link in around.Problem.Links.Where(l => l.From == stage && !around.Problem.Stages[l.To].Begun))
        {
            if (around.Placed(link.To) is not { Length: > 0 } to)
                continue;

            var least = around.Lag(link, Leaves(link, parts));
            if (least is null || least > Arrives(link, to))
                return false;
        }

        return true;
    }

    private static int Leaves(BenchLink link, SchedulePart[] parts) =>
        LinkRules.LeavesFromStart(link.Kind) ? parts[0].Start : parts[^1].End;

    private static int Arrives(BenchLink link, SchedulePart[] parts) =>
        LinkRules.ArrivesAtStart(link.Kind) ? parts[0].Start : parts[^1].End;

    private Bounds With(bool ofStart, long? least) => ofStart
        ? this with { Start = Later(Start, least) }
        : this with { Finish = Later(Finish, least) };

    private static int? Later(int? bound, long? least) =>
        bound is { } a && least is { } b && b <= Hours.Far ? (int)Math.Max(a, b) : null;
}
