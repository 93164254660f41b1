using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>
/// Asks whether one stage could start earlier, all others staying where they are, if some of what holds it back were
/// away. Looks only at the time between what still binds it and its present finish: with the same stations an earlier
/// start never finishes later. Under a long backlog it looks back two weeks, unless asked to look back all the way.
/// </summary>
internal sealed class Relaxation(CauseContext context, Blockers blockers)
{
    private readonly BenchSchedule schedule = context.Schedule;
    private readonly CompiledProblem compiled = context.Compiled;
    private const int TwoWeeks = 14 * 1440;

    private readonly List<SchedulePart> parts = [];

    /// <summary>Whether the stage could start before it does, without these blockers.</summary>
    public bool StartsEarlier(int stage, IReadOnlyCollection<Blocker> without, bool allTheWay = false)
    {
        var (earliest, leastFinish) = Bounds(stage, without);
        var start = schedule.Start(stage);
        if (earliest >= start)
        {
            return false;
        }

        earliest = allTheWay ? earliest : Math.Max(earliest, start - TwoWeeks);

        var excerpt = new Excerpt(context, stage, new MinuteSpan(earliest, SearchEnd(stage)), without);
        var state = new BenchState(new CompiledProblem(excerpt.ToProblem()));
        excerpt.TakeWhatOthersHold(state);
        return new StagePlacer(state).TryPlace(0, 0, earliest, leastFinish, parts) && parts[0].Start < start;
    }

    /// <summary>The finish, and past it what a glued wait needs, as well as the minutes a run must fit.</summary>
    private int SearchEnd(int stage)
    {
        var spec = schedule.Problem.Stages[stage];
        var glued = compiled.GluedNext[stage] is >= 0 and var wait ? schedule.Finish(wait) : 0;
        var fit = schedule.Start(stage) + spec.LoadMinutes + spec.FitMinutes;
        return Math.Min(schedule.Problem.Horizon, Math.Max(glued, Math.Max(schedule.Finish(stage), fit)) + 1);
    }

    private (int Earliest, int LeastFinish) Bounds(int stage, IReadOnlyCollection<Blocker> without)
    {
        var earliest = without.Any(b => b.Kind == CauseKind.Date) ? 0 : compiled.NotBefore[stage];
        var leastFinish = 0;
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (without.Any(b => b.Kind == CauseKind.Predecessor && b.Link == link))
            {
                continue;
            }

            var from = compiled.LinkFrom[link];
            var bound = compiled.WithLag(link, compiled.LeavesFinish(link) ? schedule.Finish(from) : schedule.Start(from));
            ref var held = ref compiled.HoldsStart(link) ? ref earliest : ref leastFinish;
            held = Math.Max(held, bound);
        }

        foreach (var lag in blockers.GreatestLags(stage).Where(lag => !without.Contains(lag.Blocker)))
        {
            ref var held = ref lag.OfFinish ? ref leastFinish : ref earliest;
            held = Math.Max(held, lag.Least);
        }

        return (earliest, leastFinish);
    }
}
