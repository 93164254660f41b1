using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>
/// When stages may be worked on, loaded and unloaded as far as hours alone say it: whatever a feasible schedule does lies
/// inside. The span of a calendar of starts holds the minutes at which something may start.
/// </summary>
internal sealed class WorkHours(BenchProblem problem)
{
    private readonly Dictionary<string, IntervalCalendar> known = [];

    // Work that was going on at minute 0 is set up, and other work there may go on in its sitting.
    private readonly bool somebodySits = problem.Stages.Any(s => s is { Begun: true, Kind: StageKind.Attended });

    /// <summary>The openings in which attended work of a mode lies, setting up and tidying left out.</summary>
    public IntervalCalendar OfWork(StageMode mode)
    {
        var key = $"{string.Join(',', mode.Stations)}|{string.Join(',', mode.Limits)}";
        if (!known.TryGetValue(key, out var open))
        {
            known.Add(key, open = FindOpen(mode));
        }

        return open;
    }

    /// <summary>The minutes at which a run's load may start.</summary>
    public IntervalCalendar StartsOfRun(BenchStage stage, StageMode mode)
    {
        var machine = With(problem.Stations[mode.Machine].Hours, mode.Limits);
        var starts = Starts(stage.LoadTakesHands ? Stations(mode.Stations) : problem.Presence, 0, stage.LoadMinutes);
        if (stage.LoadMinutes + stage.Minutes > 0)
        {
            starts = starts.Intersect(Starts(machine, 0, stage.LoadMinutes + stage.Minutes));
        }

        return mode.RunsAlone || stage.FitMinutes == 0
            ? starts
            : starts.Intersect(Starts(machine.Intersect(problem.Presence), stage.LoadMinutes, stage.FitMinutes));
    }

    /// <summary>The minutes at which a run's unload may start.</summary>
    public IntervalCalendar StartsOfUnload(BenchStage stage, StageMode mode) =>
        Starts(stage.UnloadTakesHands ? Stations(mode.Stations) : problem.Presence, 0, stage.UnloadMinutes);

    /// <summary>The minutes s for which all of s + offset to s + offset + length is open; of no length, its one minute.</summary>
    private static IntervalCalendar Starts(IntervalCalendar open, int offset, int length) => IntervalCalendar.FromSpans(
        from span in open.Spans()
        let first = Math.Max(0, span.Start - offset)
        let end = span.End - offset - Math.Max(0, length - 1)
        where first < end
        select new MinuteSpan(first, end));

    private IntervalCalendar FindOpen(StageMode mode)
    {
        var open = With(Stations(mode.Stations), mode.Limits);
        var places = mode.Stations.Where(s => problem.Stations[s].Kind == StationKind.Place).ToList();
        return mode.Stations.Where(s => problem.Stations[s].Kind == StationKind.Person)
            .SelectMany(_ => places, (person, place) => Sittings(person, place))
            .Aggregate(open, (all, sittings) => all.Intersect(sittings));
    }

    /// <summary>
    /// Whoever works at a place has set up in that opening and will tidy in it, whatever else is done there before and
    /// after; so nothing is worked in its first and last minutes.
    /// </summary>
    private IntervalCalendar Sittings(int person, int place)
    {
        var about = problem.Stations[place];
        return IntervalCalendar.FromSpans(
            from opening in problem.Stations[person].Hours.Intersect(about.Hours).Spans()
            let first = opening.Start + (opening.Start == 0 && somebodySits ? 0 : about.SetUpMinutes)
            let end = opening.End - about.TidyMinutes
            where first < end
            select new MinuteSpan(first, end));
    }

    private IntervalCalendar Stations(IReadOnlyList<int> stations) =>
        stations.Aggregate(IntervalCalendar.Always(problem.Horizon), (all, s) => all.Intersect(problem.Stations[s].Hours));

    private IntervalCalendar With(IntervalCalendar open, IReadOnlyList<int> limits) =>
        limits.Aggregate(open, (all, limit) => all.Intersect(problem.Limits[limit].Open));
}
