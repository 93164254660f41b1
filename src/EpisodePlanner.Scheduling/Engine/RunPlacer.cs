namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Finds moments for runs: load and run without a gap, then an unload; the machine is taken throughout. Every rule
/// pushes the start later until none does; as none pushes further than it must, the result is the earliest start.
/// </summary>
internal sealed class RunPlacer(BenchState state, Openings openings)
{
    private const int Fails = -1;
    private readonly CompiledProblem compiled = state.Compiled;

    public bool TryPlace(int stage, int mode, int earliest, List<SchedulePart> parts)
    {
        var spec = compiled.Problem.Stages[stage];
        var chosen = compiled.Modes[stage][mode];
        var start = earliest;
        while (true)
        {
            start = spec.Begun ? 0 : FirstStart(spec, chosen, start);
            if (start == Fails)
            {
                return false;
            }

            var runStart = start + (spec.Begun ? 0 : spec.LoadMinutes);
            if (!TryUnload(stage, mode, runStart + spec.Minutes, out var unload))
            {
                return false;
            }

            var conflict = spec.Begun ? -1 : state.Taken(chosen.Machine).EndOfFirstWithin(start, unload.End);
            if (conflict < 0)
            {
                parts.Add(new SchedulePart(PartKind.Load, start, runStart, mode));
                parts.Add(new SchedulePart(PartKind.Run, runStart, runStart + spec.Minutes, mode));
                parts.Add(unload);
                return true;
            }

            start = conflict;
        }
    }

    /// <summary>The earliest unload after a run's end, with any mode of the same machine.</summary>
    public bool TryUnload(int stage, int mode, int runEnd, out SchedulePart unload)
    {
        var spec = compiled.Problem.Stages[stage];
        var noticed = spec.LookAt is { } looks ? looks.NextOpen(runEnd) ?? Fails : runEnd;
        unload = default;
        if (noticed == Fails || noticed > state.Horizon)
        {
            return false;
        }

        return spec.UnloadTakesHands && spec.UnloadMinutes > 0
            ? TryUnloadByHand(stage, mode, noticed, out unload)
            : TryTouch(mode, noticed, spec.UnloadMinutes, out unload);
    }

    private bool TryTouch(int mode, int from, int minutes, out SchedulePart unload)
    {
        var start = PushInto(state.Presence, from, 0, minutes);
        unload = new SchedulePart(PartKind.Unload, start, start + minutes, mode);
        return start != Fails;
    }

    private bool TryUnloadByHand(int stage, int mode, int from, out SchedulePart unload)
    {
        var machine = compiled.Modes[stage][mode].Machine;
        var minutes = compiled.Problem.Stages[stage].UnloadMinutes;
        unload = new SchedulePart(PartKind.Unload, int.MaxValue, int.MaxValue, mode);
        for (var other = 0; other < compiled.Modes[stage].Length; other++)
        {
            var candidate = compiled.Modes[stage][other];
            if (candidate.Machine != machine)
            {
                continue;
            }

            openings.Begin(candidate, from, sitting: false);
            if (openings.TryNext(from, minutes, out var start, out _) && start < unload.Start)
            {
                unload = new SchedulePart(PartKind.Unload, start, start + minutes, other);
            }
        }

        return unload.Start < int.MaxValue;
    }

    private int FirstStart(BenchStage spec, CompiledMode mode, int earliest)
    {
        var start = earliest;
        while (true)
        {
            var pushed = Push(spec, mode, start);
            if (pushed == start || pushed == Fails)
            {
                return pushed;
            }

            start = pushed;
        }
    }

    private int Push(BenchStage spec, CompiledMode mode, int start)
    {
        var end = spec.LoadMinutes + spec.Minutes;
        start = PushLoad(spec, mode, start);
        start = start == Fails ? Fails : PushInto(state.Free(mode.Machine), start, end);
        foreach (var limit in mode.Limits)
        {
            start = start == Fails ? Fails : PushInto(limit, start, 0, end);
        }

        return start == Fails || mode.RunsAlone ? start : PushWithHands(spec, mode, start);
    }

    private int PushLoad(BenchStage spec, CompiledMode mode, int start)
    {
        if (!spec.LoadTakesHands || spec.LoadMinutes == 0)
        {
            return PushInto(state.Presence, start, 0, spec.LoadMinutes);
        }

        openings.Begin(mode, start, sitting: false);
        return openings.TryNext(start, spec.LoadMinutes, out var found, out _) ? found : Fails;
    }

    /// <summary>Somebody must be present as long as the run may take, and the machine open.</summary>
    private int PushWithHands(BenchStage spec, CompiledMode mode, int start)
    {
        var (from, to) = (spec.LoadMinutes, spec.LoadMinutes + spec.FitMinutes);
        start = PushInto(state.Presence, start, from, to);
        start = start == Fails ? Fails : PushInto(compiled.Problem.Stations[mode.Machine].Hours, start, from, to);
        foreach (var limit in mode.Limits)
        {
            start = start == Fails ? Fails : PushInto(limit, start, from, to);
        }

        return start;
    }

    /// <summary>The least start at or after one for which [start + from, start + to) lies in one span.</summary>
    private static int PushInto(IntervalCalendar calendar, int start, int from, int to)
    {
        for (var i = calendar.FirstEndingAfter(start + from); i < calendar.Count; i++)
        {
            var low = Math.Max(start + from, calendar.Starts[i]);
            if (low + (to - from) <= calendar.Ends[i])
            {
                return low - from;
            }
        }

        return Fails;
    }

    private static int PushInto(FreeTime free, int start, int length)
    {
        for (var gap = free.FirstEndingAfter(start); gap < free.Limit; gap++)
        {
            var low = Math.Max(start, free.Start(gap));
            if (low + length <= free.End(gap))
            {
                return low;
            }
        }

        return Fails;
    }
}
