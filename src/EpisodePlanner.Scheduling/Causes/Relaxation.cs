using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>
/// Asks whether one stage could start earlier, all others staying where they are, if some of what holds it back were
/// away. Looks only at the time between what still binds it and its present finish: with the same stations an earlier
/// start never finishes later.
/// </summary>
internal sealed class Relaxation(BenchSchedule schedule, CompiledProblem compiled, Occupancy occupancy)
{
    private readonly List<SchedulePart> parts = [];

    /// <summary>Whether the stage could start before it does, without these blockers.</summary>
    public bool StartsEarlier(int stage, IReadOnlyCollection<Blocker> without)
    {
        var (earliest, leastFinish) = Bounds(stage, without);
        var start = schedule.Start(stage);
        if (earliest >= start)
        {
            return false;
        }

        var span = new MinuteSpan(earliest, SearchEnd(stage));
        var alone = new CompiledProblem(SingleStage(stage, span, without));
        var state = new BenchState(alone);
        TakeWhatOthersHold(state, stage, span, without);
        return new StagePlacer(state).TryPlace(0, 0, earliest, leastFinish, parts) && parts[0].Start < start;
    }

    /// <summary>The finish, and past it what a glued wait needs, as well as the minutes a run must fit.</summary>
    private int SearchEnd(int stage)
    {
        var spec = schedule.Problem.Stages[stage];
        return Math.Max(schedule.Finish(stage), schedule.Start(stage) + spec.LoadMinutes + spec.FitMinutes) + 1;
    }

    private (int Earliest, int LeastFinish) Bounds(int stage, IReadOnlyCollection<Blocker> without)
    {
        var earliest = without.Any(b => b.Kind == CauseKind.Date) ? 0 : compiled.NotBefore[stage];
        var leastFinish = 0;
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (without.Any(b => b.Link == link))
            {
                continue;
            }

            var from = compiled.LinkFrom[link];
            var bound = compiled.WithLag(link, compiled.LeavesFinish(link) ? schedule.Finish(from) : schedule.Start(from));
            ref var held = ref compiled.HoldsStart(link) ? ref earliest : ref leastFinish;
            held = Math.Max(held, bound);
        }

        return (earliest, leastFinish);
    }

    /// <summary>A problem of this stage alone, with its present mode and hours as far as they matter.</summary>
    private BenchProblem SingleStage(int stage, MinuteSpan span, IReadOnlyCollection<Blocker> without)
    {
        var problem = schedule.Problem;
        var spec = problem.Stages[stage];
        var mode = spec.Modes[schedule.Parts(stage)[0].Mode];
        var isUnset = without.Any(b => b.Kind == CauseKind.SettingUp);
        var limits = mode.Limits.Where(l => without.All(b => b.Limit != l)).ToArray();
        var input = new BenchInput
        {
            Horizon = Math.Min(span.End, problem.Horizon),
            Presence = HoursOrAlways(problem.Presence, span, without.Any(b => b.Kind == CauseKind.Presence)),
            Stations = [.. problem.Stations.Select((station, s) => Reduced(station, s, spec, mode, span, without, isUnset))],
            Limits = [.. problem.Limits.Select((limit, l) => limits.Contains(l) ? limit with { Open = limit.Open.Clip(span.Start, span.End) } : limit)],
            Stages =
            [
                spec with
                {
                    Modes = [mode with { Limits = limits }],
                    MinimumBlock = without.Any(b => b.Kind == CauseKind.MinimumBlock) ? 1 : spec.MinimumBlock,
                    GluedTo = -1,
                },
            ],
        };
        return new BenchProblem(input, StageGraph.Create(1, []));
    }

    private static Station Reduced(
        Station station, int index, BenchStage spec, StageMode mode, MinuteSpan span, IReadOnlyCollection<Blocker> without, bool isUnset)
    {
        var used = mode.Machine == index || mode.Stations.Contains(index)
            || (spec.UnloadTakesHands && spec.Modes.Any(other => other.Stations.Contains(index)));
        var isOpen = without.Any(b => b.Kind == CauseKind.ClosedHours && b.Station == index);
        var hours = used ? HoursOrAlways(station.Hours, span, isOpen) : IntervalCalendar.Never;
        return station with
        {
            Hours = hours,
            SetUpMinutes = isUnset ? 0 : station.SetUpMinutes,
            TidyMinutes = isUnset ? 0 : station.TidyMinutes,
        };
    }

    private static IntervalCalendar HoursOrAlways(IntervalCalendar hours, MinuteSpan span, bool always) =>
        always ? IntervalCalendar.FromSpans([span]) : hours.Clip(span.Start, span.End);

    private void TakeWhatOthersHold(BenchState state, int stage, MinuteSpan span, IReadOnlyCollection<Blocker> without)
    {
        for (var station = 0; station < schedule.Problem.Stations.Count; station++)
        {
            foreach (var holding in occupancy.Within(station, span.Start, span.End))
            {
                if (holding.Stage != stage && !without.Any(b => b.Stage == holding.Stage && b.Station == station))
                {
                    state.Take(station, holding.Start, holding.End, holding.PlaceMark);
                }
            }
        }
    }
}
