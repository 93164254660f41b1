namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Finds the latest start of a stage for which its finish comes early enough. A later start never finishes earlier, so
/// halving finds it; a guess from open hours alone mostly finds it at once.
/// </summary>
internal sealed class LatestStarts(CompiledProblem compiled, StagePlacer placer)
{
    private readonly Dictionary<CompiledMode, IntervalCalendar?> hoursByMode = [];
    private readonly Dictionary<string, IntervalCalendar> hoursByStations = [];
    private readonly List<SchedulePart> parts = [];

    /// <summary>The latest start and its finish.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="earlyStart">Its early start, which keeps both bounds or is the answer.</param>
    /// <param name="earlyFinish">The finish that belongs to it.</param>
    /// <param name="startBound">The start may not come later.</param>
    /// <param name="finishBound">The finish may not come later.</param>
    public (int Start, int Finish) Find(int stage, int earlyStart, int earlyFinish, int startBound, int finishBound)
    {
        var (good, found) = (earlyStart, (earlyStart, earlyFinish));
        if (compiled.Begun[stage])
        {
            return found;
        }

        var bad = Math.Min(startBound, finishBound - Length(stage)) + 1;
        var guess = Guess(stage, bad - 1, finishBound);
        if (guess > good && guess < bad)
        {
            (good, bad, found) = Narrow(stage, guess, (good, bad, found), startBound, finishBound);
            (good, bad, found) = Narrow(stage, good == guess ? guess + 1 : guess - 1, (good, bad, found), startBound, finishBound);
        }

        while (bad - good > 1)
        {
            (good, bad, found) = Narrow(stage, good + ((bad - good) / 2), (good, bad, found), startBound, finishBound);
        }

        return found;
    }

    private (int Good, int Bad, (int Start, int Finish) Found) Narrow(
        int stage, int at, (int Good, int Bad, (int Start, int Finish) Found) range, int startBound, int finishBound)
    {
        if (at <= range.Good || at >= range.Bad)
        {
            return range;
        }

        return Keeps(stage, at, startBound, finishBound) is { } placed
            ? (Math.Max(at, placed.Start), range.Bad, placed)
            : (range.Good, at, range.Found);
    }

    /// <summary>The placement from a minute on that keeps both bounds, or null.</summary>
    private (int Start, int Finish)? Keeps(int stage, int from, int startBound, int finishBound)
    {
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, from, parts) && parts[0].Start <= startBound && parts[^1].End <= finishBound)
            {
                return (parts[0].Start, parts[^1].End);
            }
        }

        return null;
    }

    /// <summary>The least time between start and finish.</summary>
    private int Length(int stage)
    {
        var spec = compiled.Problem.Stages[stage];
        return spec.WaitHours is null ? spec.Minutes + spec.LoadMinutes + spec.UnloadMinutes : 0;
    }

    /// <summary>A start that leaves just the open minutes needed; exact where no minimum block or sitting plays a part.</summary>
    private int Guess(int stage, int latest, int finishBound)
    {
        var spec = compiled.Problem.Stages[stage];
        if (spec.WaitHours is { } hours)
        {
            return hours.LatestStart(finishBound, spec.Minutes) ?? latest;
        }

        var guess = -1;
        foreach (var mode in compiled.Modes[stage])
        {
            var open = spec.Kind == StageKind.Attended ? Hours(mode) : null;
            guess = Math.Max(guess, open?.LatestStart(finishBound, spec.Minutes) ?? latest);
        }

        return Math.Min(latest, guess);
    }

    private IntervalCalendar? Hours(CompiledMode mode)
    {
        if (!hoursByMode.TryGetValue(mode, out var hours))
        {
            hours = mode.All.Length + mode.Limits.Length == 0 ? null : Interned(mode);
            hoursByMode.Add(mode, hours);
        }

        return hours;
    }

    private IntervalCalendar Interned(CompiledMode mode)
    {
        var key = $"{string.Join(',', mode.All.Order())}|{string.Join(',', mode.LimitIds.Order())}";
        if (!hoursByStations.TryGetValue(key, out var hours))
        {
            var calendars = mode.All.Select(s => compiled.Problem.Stations[s].Hours).Concat(mode.Limits);
            hours = calendars.Aggregate((left, right) => left.Intersect(right));
            hoursByStations.Add(key, hours);
        }

        return hours;
    }
}
