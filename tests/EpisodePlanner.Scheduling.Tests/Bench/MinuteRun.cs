namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>A run told minute by minute, with unlimited stations.</summary>
internal sealed class MinuteRun(BenchStage spec, StageMode mode, BenchProblem problem, Func<IntervalCalendar, MinuteHours> hours)
{
    /// <summary>When a run that begins to be loaded at just this minute is unloaded; null where it can't be.</summary>
    public int? Finish(int start)
    {
        var run = start + (spec.Begun ? 0 : spec.LoadMinutes);
        if (!spec.Begun && !(MayLoad(start) && IsOpen(start, run - start + spec.Minutes) && MayRun(run)))
        {
            return null;
        }

        for (var unload = run + spec.Minutes; unload <= problem.Horizon; unload++)
        {
            if (IsNoticed(run + spec.Minutes, unload) && MayUnload(unload))
            {
                return unload + spec.UnloadMinutes;
            }
        }

        return null;
    }

    private bool MayLoad(int start) => spec.LoadTakesHands
        ? Hands(mode, start, spec.LoadMinutes)
        : hours(problem.Presence).HasAll(start, spec.LoadMinutes);

    private bool MayRun(int run) => mode.RunsAlone
        || (IsOpen(run, spec.FitMinutes) && hours(problem.Presence).HasAll(run, spec.FitMinutes));

    private bool MayUnload(int unload) => spec.UnloadTakesHands
        ? spec.Modes.Any(other => other.Machine == mode.Machine && Hands(other, unload, spec.UnloadMinutes))
        : hours(problem.Presence).HasAll(unload, spec.UnloadMinutes);

    private bool IsNoticed(int end, int unload) =>
        spec.LookAt is not { } looks || Enumerable.Range(end, unload - end + 1).Any(hours(looks).Has);

    /// <summary>Whether the machine and the limits are open.</summary>
    private bool IsOpen(int start, int length) => mode.Limits.Select(l => problem.Limits[l].Open)
        .Append(problem.Stations[mode.Machine].Hours).All(open => hours(open).HasAll(start, length));

    private bool Hands(StageMode with, int start, int length) =>
        with.Stations.All(s => hours(problem.Stations[s].Hours).HasAll(start, length));
}
