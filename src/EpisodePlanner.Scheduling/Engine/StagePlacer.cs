namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Finds the earliest moment at which a stage can be done with one mode, beside all that is taken already.</summary>
internal sealed class StagePlacer
{
    private readonly BenchState state;
    private readonly CompiledProblem compiled;
    private readonly Openings openings;
    private readonly RunPlacer runs;

    public StagePlacer(BenchState state)
    {
        this.state = state;
        compiled = state.Compiled;
        openings = new Openings(state);
        runs = new RunPlacer(state, openings);
    }

    public RunPlacer Runs => runs;

    /// <summary>Finds the parts of a stage that starts at or after a minute and finishes as early as it can.</summary>
    /// <returns>Whether it fits before the horizon; then <paramref name="parts"/> holds its parts.</returns>
    public bool TryPlace(int stage, int mode, int earliest, List<SchedulePart> parts)
    {
        parts.Clear();
        var found = compiled.Kinds[stage] switch
        {
            StageKind.Attended => TryAttended(stage, mode, earliest, parts),
            StageKind.Run => runs.TryPlace(stage, mode, earliest, parts),
            _ => TryWait(stage, mode, earliest, parts),
        };
        return found && parts[^1].End <= state.Horizon;
    }

    /// <summary>The same with a finish that may not come before a minute; it starts as early as that allows.</summary>
    /// <remarks>A later start never finishes earlier, so the first start that finishes late enough is found by halving.</remarks>
    public bool TryPlace(int stage, int mode, int earliest, int leastFinish, List<SchedulePart> parts)
    {
        if (!TryPlace(stage, mode, earliest, parts) || parts[^1].End >= leastFinish)
        {
            return parts.Count > 0 && parts[^1].End <= state.Horizon;
        }

        var (tooEarly, enough) = (earliest, leastFinish);
        while (enough - tooEarly > 1)
        {
            var middle = tooEarly + ((enough - tooEarly) / 2);
            if (TryPlace(stage, mode, middle, parts) && parts[^1].End < leastFinish)
            {
                tooEarly = middle;
            }
            else
            {
                enough = middle;
            }
        }

        return TryPlace(stage, mode, enough, parts);
    }

    private bool TryAttended(int stage, int mode, int earliest, List<SchedulePart> parts)
    {
        var chosen = compiled.Modes[stage][mode];
        var from = earliest;
        while (TryFragments(stage, mode, from, parts))
        {
            if (EndOfHold(stage, chosen, parts) is >= 0 and var held)
            {
                from = held;
            }
            else if (compiled.GluedNext[stage] is >= 0 and var wait && EndOfConflict(wait, parts[^1].End) is >= 0 and var end)
            {
                from = FirstFinishing(stage, mode, from, end, parts);
            }
            else
            {
                return true;
            }
        }

        parts.Clear();
        return false;
    }

    /// <summary>The first start from which the work, other things aside, is finished at or after a minute.</summary>
    private int FirstFinishing(int stage, int mode, int from, int leastFinish, List<SchedulePart> parts)
    {
        var (tooEarly, enough) = (from, leastFinish);
        while (enough - tooEarly > 1)
        {
            var middle = tooEarly + ((enough - tooEarly) / 2);
            var isEarly = TryFragments(stage, mode, middle, parts) && parts[^1].End < leastFinish;
            (tooEarly, enough) = isEarly ? (middle, enough) : (tooEarly, middle);
        }

        return enough;
    }

    private bool TryFragments(int stage, int mode, int from, List<SchedulePart> parts)
    {
        parts.Clear();
        var left = compiled.Minutes[stage];
        if (left == 0)
        {
            parts.Add(new SchedulePart(PartKind.Work, from, from, mode));
            return true;
        }

        var block = compiled.MinimumBlock[stage];
        from = openings.BeginWork(compiled.Modes[stage][mode], from, Math.Min(block, left));
        while (left > 0)
        {
            if (!openings.TryNext(from, Math.Min(block, left), out var start, out var end))
            {
                return false;
            }

            if (parts.Count == 0)
            {
                openings.Learn(from, Math.Min(block, left), start);
            }

            from = Math.Min(end, start + left);
            left -= from - start;
            parts.Add(new SchedulePart(PartKind.Work, start, from, mode));
        }

        return true;
    }

    /// <summary>
    /// Where machines and places are to stay taken: the end of whatever else takes one from start to finish; −1 where
    /// nothing does. No start before that end can do better.
    /// </summary>
    private int EndOfHold(int stage, CompiledMode mode, List<SchedulePart> parts)
    {
        foreach (var station in compiled.StaysSetUp[stage] ? mode.Holdable : [])
        {
            var end = state.Taken(station).EndOfFirstWithin(parts[0].Start, parts[^1].End);
            if (end >= 0)
            {
                return end;
            }
        }

        return -1;
    }

    /// <summary>
    /// Where a wait follows without a gap: the end of whatever else takes its place in that time; −1 where nothing does.
    /// The work must be finished at that end or later.
    /// </summary>
    private int EndOfConflict(int wait, int start)
    {
        var end = compiled.WaitEnd(wait, start);
        if (end < 0 || end > state.Horizon)
        {
            return state.Horizon + 1;
        }

        foreach (var station in compiled.Modes[wait][0].Holdable)
        {
            var conflict = state.Taken(station).EndOfFirstWithin(start, end);
            if (conflict >= 0)
            {
                return conflict;
            }
        }

        return -1;
    }

    private bool TryWait(int stage, int mode, int earliest, List<SchedulePart> parts)
    {
        var start = earliest;
        while (compiled.WaitEnd(stage, start) is >= 0 and var end)
        {
            var conflict = -1;
            foreach (var station in compiled.Modes[stage][mode].Holdable)
            {
                conflict = Math.Max(conflict, state.Taken(station).EndOfFirstWithin(start, end));
            }

            if (conflict < 0)
            {
                parts.Add(new SchedulePart(PartKind.Wait, start, end, mode));
                return true;
            }

            start = conflict;
        }

        return false;
    }
}
