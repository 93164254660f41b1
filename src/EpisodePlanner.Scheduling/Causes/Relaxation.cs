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

        // Whether a sitting goes on shows in the work before, however long ago.
        var span = new MinuteSpan(compiled.HasSittings ? 0 : earliest, SearchEnd(stage));
        var alone = new CompiledProblem(SingleStage(stage, span, without));
        var state = new BenchState(alone);
        TakeWhatOthersHold(state, stage, span, without);
        return new StagePlacer(state).TryPlace(0, 0, earliest, leastFinish, parts) && parts[0].Start < start;
    }

    /// <summary>The finish, and past it what a glued wait needs, as well as the minutes a run must fit.</summary>
    private int SearchEnd(int stage)
    {
        var spec = schedule.Problem.Stages[stage];
        var glued = compiled.GluedNext[stage] is >= 0 and var wait ? schedule.Finish(wait) : 0;
        return Math.Max(glued, Math.Max(schedule.Finish(stage), schedule.Start(stage) + spec.LoadMinutes + spec.FitMinutes)) + 1;
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

    /// <summary>
    /// A problem of this stage (and a wait glued to it) alone, with its present mode and hours as far as they matter.
    /// </summary>
    private BenchProblem SingleStage(int stage, MinuteSpan span, IReadOnlyCollection<Blocker> without)
    {
        var problem = schedule.Problem;
        var spec = problem.Stages[stage];
        var mode = spec.Modes[schedule.Parts(stage)[0].Mode];
        var isUnset = without.Any(b => b.Kind == CauseKind.SettingUp);
        var unloadModes = spec.Modes.Where(other => !ReferenceEquals(other, mode) && mode.Machine >= 0 && other.Machine == mode.Machine);
        BenchStage[] glued = compiled.GluedNext[stage] is >= 0 and var wait ? [problem.Stages[wait] with { GluedTo = 0 }] : [];
        var used = mode.Stations.Append(mode.Machine).Concat(unloadModes.SelectMany(other => other.Stations))
            .Concat(glued.SelectMany(g => g.Modes[0].Stations)).ToHashSet();
        var limits = mode.Limits.Where(l => without.All(b => b.Limit != l)).ToArray();
        var input = new BenchInput
        {
            Horizon = Math.Min(span.End, problem.Horizon),
            Presence = HoursOrAlways(problem.Presence, span, without.Any(b => b.Kind == CauseKind.Presence)),
            Stations = [.. problem.Stations.Select((station, s) => Reduced(station, used.Contains(s), span, without.Any(b => b.Kind == CauseKind.ClosedHours && b.Station == s), isUnset))],
            Limits = [.. problem.Limits.Select((limit, l) => limits.Contains(l) ? limit with { Open = limit.Open.Clip(span.Start, span.End) } : limit)],
            Stages =
            [
                spec with
                {
                    Modes = [mode with { Limits = limits }, .. unloadModes],
                    MinimumBlock = without.Any(b => b.Kind == CauseKind.MinimumBlock) ? 1 : spec.MinimumBlock,
                    GluedTo = -1,
                },
                .. glued,
            ],
        };
        return new BenchProblem(input, StageGraph.Create(input.Stages.Count, []));
    }

    private static Station Reduced(Station station, bool used, MinuteSpan span, bool always, bool unset) => station with
    {
        Hours = used ? HoursOrAlways(station.Hours, span, always) : IntervalCalendar.Never,
        SetUpMinutes = unset ? 0 : station.SetUpMinutes,
        TidyMinutes = unset ? 0 : station.TidyMinutes,
    };

    private static IntervalCalendar HoursOrAlways(IntervalCalendar hours, MinuteSpan span, bool always) =>
        always ? IntervalCalendar.FromSpans([span]) : hours.Clip(span.Start, span.End);

    private void TakeWhatOthersHold(BenchState state, int stage, MinuteSpan span, IReadOnlyCollection<Blocker> without)
    {
        for (var station = 0; station < schedule.Problem.Stations.Count; station++)
        {
            foreach (var holding in occupancy.Within(station, span.Start, span.End))
            {
                if (holding.Stage != stage && holding.Stage != compiled.GluedNext[stage] && !without.Any(b => b.Stage == holding.Stage && b.Station == station))
                {
                    state.Take(station, holding.Start, holding.End, holding.PlaceMark);
                }
            }
        }
    }
}
