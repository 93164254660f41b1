using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>
/// A problem of one stage (and a wait glued to it) with its present mode: its stations only, and their hours only as
/// far as they matter.
/// </summary>
internal sealed class Excerpt
{
    private readonly CauseContext context;
    private readonly int stage;
    private readonly MinuteSpan span;
    private readonly IReadOnlyCollection<Blocker> without;
    private readonly BenchStage spec;
    private readonly StageMode mode;
    private readonly StageMode[] unloadModes;
    private readonly BenchStage? glued;
    private readonly int[] stations;
    private readonly int[] used;

    public Excerpt(CauseContext context, int stage, MinuteSpan span, IReadOnlyCollection<Blocker> without)
    {
        (this.context, this.stage, this.span, this.without) = (context, stage, span, without);
        spec = Problem.Stages[stage];
        mode = spec.Modes[context.Schedule.Parts(stage)[0].Mode];
        unloadModes = [.. spec.Modes.Where(other => other != mode && mode.Machine >= 0 && other.Machine == mode.Machine)];
        glued = context.Compiled.GluedNext[stage] is >= 0 and var wait ? Problem.Stages[wait] : null;
        StageMode[] modes = [mode, .. unloadModes, .. glued?.Modes ?? []];
        used = [.. modes.SelectMany(m => m.Stations).Append(mode.Machine).Where(s => s >= 0).Distinct()];
        stations = [.. used.Union(context.PlacesWithSittings)];
    }

    private BenchProblem Problem => context.Schedule.Problem;

    public BenchProblem ToProblem()
    {
        int[] limits = [.. mode.Limits.Where(l => without.All(b => b.Limit != l))];
        var input = new BenchInput
        {
            Horizon = span.End,
            Presence = HoursOrAlways(Problem.Presence, span.Start, Relaxes(CauseKind.Presence)),
            Stations = [.. stations.Select(Reduced)],
            Limits = [.. limits.Select(l => Problem.Limits[l] with { Open = Problem.Limits[l].Open.Clip(span.Start, span.End) })],
            Stages = [Alone(limits.Length), .. Glued()],
        };
        return new BenchProblem(input, StageGraph.Create(input.Stages.Count, []));
    }

    public void TakeWhatOthersHold(BenchState state)
    {
        foreach (var station in used)
        {
            foreach (var holding in context.Occupancy.Within(station, FirstMinute(station), span.End))
            {
                if (holding.Stage != stage && holding.Stage != context.Compiled.GluedNext[stage]
                    && !without.Any(b => b.Stage == holding.Stage && b.Station == station))
                {
                    var mark = holding.PlaceMark == FreeTime.NoPlace ? 0 : 1 + IndexOf(holding.PlaceMark - 1);
                    state.Take(IndexOf(station), holding.Start, holding.End, mark);
                }
            }
        }
    }

    private BenchStage Alone(int limits) => spec with
    {
        Modes =
        [
            Mapped(mode) with { Limits = [.. Enumerable.Range(0, limits)] },
                .. unloadModes.Select(other => Mapped(other) with { Limits = [] }),
            ],
        MinimumBlock = Relaxes(CauseKind.MinimumBlock) ? 1 : spec.MinimumBlock,
    };

    private IEnumerable<BenchStage> Glued() =>
        glued is null ? [] : [glued with { GluedTo = 0, Modes = [Mapped(glued.Modes[0])] }];

    private StageMode Mapped(StageMode original) => original with
    {
        Stations = [.. original.Stations.Select(IndexOf)],
        Machine = original.Machine < 0 ? -1 : IndexOf(original.Machine),
    };

    private Station Reduced(int index)
    {
        var station = Problem.Stations[index];
        var always = without.Any(b => b.Kind == CauseKind.ClosedHours && b.Station == index);
        var unset = Relaxes(CauseKind.SettingUp);
        return station with
        {
            Hours = used.Contains(index) ? HoursOrAlways(station.Hours, FirstMinute(index), always) : IntervalCalendar.Never,
            SetUpMinutes = unset ? 0 : station.SetUpMinutes,
            TidyMinutes = unset ? 0 : station.TidyMinutes,
        };
    }

    private IntervalCalendar HoursOrAlways(IntervalCalendar hours, int from, bool always) =>
        always ? IntervalCalendar.FromSpans([new MinuteSpan(from, span.End)]) : hours.Clip(from, span.End);

    /// <summary>
    /// Whether a sitting goes on shows in the work before it: where that is in the same opening, it is looked at too.
    /// </summary>
    private int FirstMinute(int station)
    {
        if (!context.Compiled.HasSittings)
        {
            return span.Start;
        }

        var hours = Problem.Stations[station].Hours;
        var opening = hours.FirstEndingAfter(span.Start);
        var opened = opening < hours.Count ? Math.Min(hours.Starts[opening], span.Start) : span.Start;
        var before = context.Occupancy.LastEndingBy(station, span.Start, stage);
        return before is { } holding && holding.End >= opened ? Math.Max(opened, holding.Start) : opened;
    }

    private bool Relaxes(CauseKind kind) => without.Any(b => b.Kind == kind);

    private int IndexOf(int station) => Array.IndexOf(stations, station);
}
