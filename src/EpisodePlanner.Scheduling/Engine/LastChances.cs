namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Stages whose stations or limits close for good: a booked window, a season.</summary>
internal sealed class LastChances(CompiledProblem compiled)
{
    /// <summary>Stations that close this long before the horizon close for good.</summary>
    private const int ClosesForGood = 30 * 1440;

    /// <summary>When a stage's result is wanted, or its last chance, whichever comes first.</summary>
    public int DueOf(int stage) => Math.Min(compiled.Problem.Stages[stage].Due, IsLast(stage) ? LastEnd(stage) : int.MaxValue);

    /// <summary>Whether a stage has no chance any more long before the horizon.</summary>
    public bool IsLast(int stage) => LastEnd(stage) < compiled.Problem.Horizon - ClosesForGood;

    /// <summary>The last minute at which a stage's stations and limits are open together, at most.</summary>
    private int LastEnd(int stage)
    {
        if (compiled.Kinds[stage] == StageKind.Wait || compiled.Minutes[stage] == 0)
        {
            return int.MaxValue;
        }

        var last = 0;
        foreach (var mode in compiled.Modes[stage])
        {
            var end = int.MaxValue;
            foreach (var station in mode.All)
            {
                end = Math.Min(end, LastOpen(compiled.Problem.Stations[station].Hours));
            }

            foreach (var limit in mode.Limits)
            {
                end = Math.Min(end, LastOpen(limit));
            }

            last = Math.Max(last, end);
        }

        return last;
    }

    private static int LastOpen(IntervalCalendar hours) => hours.Count == 0 ? 0 : hours.Ends[^1];
}
