namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Serial generation: takes stages in the order of their keys as soon as all they wait for is placed, and gives each
/// the earliest moment that is left. One instance makes many schedules, one after the other.
/// </summary>
/// <remarks>
/// A run's unload is an item of its own with its own key. Until it is placed the machine is held with an open end, so
/// whatever wants that machine first makes the unload happen.
/// </remarks>
internal sealed class SerialGenerator
{
    private const int None = -1;

    private readonly CompiledProblem compiled;
    private readonly BenchState state;
    private readonly StagePlacer placer;
    private readonly BenchTimes times;
    private readonly ModeChoice choice;
    private readonly LagKeeper lags;
    private readonly PartStore store;
    private readonly int[] unloadPending;
    private readonly List<int> order = [];
    private readonly PriorityQueue<int, long> ready = new();

    /// <param name="compiled">The problem.</param>
    /// <param name="unkept">By stage: the link whose greatest lag no schedule keeps; −1 for none.</param>
    public SerialGenerator(CompiledProblem compiled, ReadOnlySpan<int> unkept)
    {
        this.compiled = compiled;
        state = new BenchState(compiled);
        placer = new StagePlacer(state);
        times = new BenchTimes(compiled.StageCount);
        choice = new ModeChoice(compiled, placer);
        lags = new LagKeeper(compiled, placer, unkept);
        store = new PartStore(compiled.StageCount);
        unloadPending = new int[compiled.Problem.Stations.Count];
    }

    /// <summary>When the stages of the last schedule start; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Starts => times.Starts;

    /// <summary>When they are finished; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Finishes => times.Finishes;

    /// <summary>When the items of the last schedule are done: stages, then unloads; far off where unplaced.</summary>
    public void WriteItems(Span<int> done)
    {
        var never = compiled.Problem.Horizon + 1;
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            done[stage] = times.Finishes[stage] == None ? never : times.Finishes[stage];
        }

        for (var item = compiled.StageCount; item < done.Length; item++)
        {
            var run = compiled.StageOfUnload[item - compiled.StageCount];
            done[item] = done[run];
            done[run] = times.Finishes[run] == None ? never : times.Starts[run];
        }
    }

    /// <summary>Makes one schedule; where greatest lags ask for it, by decoding the list several times.</summary>
    /// <param name="keys">By item, stages and then unloads: lower goes first.</param>
    /// <param name="latest">By stage: a later finish makes the schedule useless, so that it ends there.</param>
    /// <param name="made">How often the list was decoded; each counts as a schedule.</param>
    /// <returns>Whether the schedule is complete.</returns>
    public bool TryGenerate(ReadOnlySpan<int> keys, ReadOnlySpan<int> latest, out int made)
    {
        made = 0;
        lags.Begin();
        do
        {
            made++;
            if (!TryDecode(keys, latest))
            {
                return false;
            }
        }
        while (lags.TryAgain(times));

        return true;
    }

    private bool TryDecode(ReadOnlySpan<int> keys, ReadOnlySpan<int> latest)
    {
        Reset(keys);
        while (!lags.MustRestart && ready.TryDequeue(out var item, out _))
        {
            if (item >= compiled.StageCount)
            {
                PlaceUnload(compiled.StageOfUnload[item - compiled.StageCount], keys);
            }
            else if (times.Starts[item] == None)
            {
                Place(item, keys);
                if (times.Finishes[item] > latest[item])
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>The last schedule as an immutable result.</summary>
    public BenchSchedule ToSchedule()
    {
        var (first, parts) = store.ToColumns(times.Finishes);
        return new BenchSchedule(compiled.Problem, first, parts, [.. order.Where(stage => times.Finishes[stage] != None)]);
    }

    private void Reset(ReadOnlySpan<int> keys)
    {
        state.Reset();
        store.Clear();
        order.Clear();
        ready.Clear();
        unloadPending.AsSpan().Fill(None);
        times.Reset(compiled.WaitingFor);
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            if (times.WaitingFor[stage] == 0)
            {
                MakeReady(stage, keys);
            }
        }
    }

    /// <summary>By key, then by item.</summary>
    private static long Priority(int key, int item) => ((long)key << 32) | (uint)item;

    /// <summary>
    /// Work that is going on stays where it is, so it is placed before anything else; what must follow something soon
    /// is placed before whatever could take its time.
    /// </summary>
    private void MakeReady(int stage, ReadOnlySpan<int> keys)
    {
        var key = compiled.Begun[stage] ? int.MinValue : compiled.GreatestLags.Binds[stage] ? int.MinValue + 1 : keys[stage];
        ready.Enqueue(stage, Priority(key, stage));
    }

    private void Place(int stage, ReadOnlySpan<int> keys)
    {
        UnloadMachinesWantedBy(stage, keys);
        if (lags.IsGivenUp(stage) || !compiled.TryBounds(stage, times.Starts, times.Finishes, out var earliest, out var leastFinish)
            || !(TryFind(stage, earliest, leastFinish) || TryFindWithoutLags(stage, earliest, leastFinish)))
        {
            return;
        }

        if (choice.Excess > 0)
        {
            lags.ComesTooLate(stage, choice.Parts[0].Start, choice.Parts[^1].End, times);
            return;
        }

        order.Add(stage);
        times.Starts[stage] = choice.Parts[0].Start;
        if (compiled.Kinds[stage] == StageKind.Run)
        {
            CommitRun(stage, keys);
            return;
        }

        Commit(stage);
        Finish(stage, choice.Parts[^1].End, keys);
    }

    /// <summary>The earliest moment from which whatever must follow soon still can.</summary>
    private bool TryFind(int stage, int earliest, int leastFinish)
    {
        lags.Apply(stage, ref earliest, ref leastFinish);
        while (choice.TryFind(stage, earliest, leastFinish, times))
        {
            if (!lags.MustComeLater(stage, choice.Parts[0], choice.Parts[^1], times, ref earliest, ref leastFinish))
            {
                return true;
            }
        }

        return false;
    }

    private bool TryFindWithoutLags(int stage, int earliest, int leastFinish) =>
        lags.GiveUpWhatWasInVain(stage) && !lags.MustRestart && choice.TryFind(stage, earliest, leastFinish, times);

    private void Commit(int stage)
    {
        var parts = choice.Parts;
        var mode = compiled.Modes[stage][parts[0].Mode];
        var staysSetUp = compiled.StaysSetUp[stage];
        foreach (var part in parts)
        {
            foreach (var station in staysSetUp ? mode.Persons : mode.All)
            {
                state.Take(station, part.Start, part.End, mode.PlaceMark);
            }
        }

        if (staysSetUp)
        {
            foreach (var station in mode.Holdable)
            {
                state.Take(station, parts[0].Start, parts[^1].End, mode.PlaceMark);
            }
        }

        store.Add(stage, parts);
    }

    private void CommitRun(int stage, ReadOnlySpan<int> keys)
    {
        var (load, run, unload) = (choice.Parts[0], choice.Parts[1], choice.Parts[2]);
        var mode = compiled.Modes[stage][load.Mode];
        if (compiled.Problem.Stages[stage].LoadTakesHands)
        {
            TakeHands(mode, load);
        }

        var mustFollowNow = state.Taken(mode.Machine).NextStart(run.End) < int.MaxValue;
        state.Take(mode.Machine, load.Start, run.End, FreeTime.NoPlace);
        store.Add(stage, [load, run]);
        if (mustFollowNow || compiled.GreatestLags.Binds[stage] || !TakesHandsToUnload(stage))
        {
            CommitUnload(stage, mode.Machine, unload, keys);
            return;
        }

        unloadPending[mode.Machine] = stage;
        var item = compiled.UnloadItem[stage];
        ready.Enqueue(item, Priority(keys[item], item));
    }

    private void PlaceUnload(int stage, ReadOnlySpan<int> keys)
    {
        var run = store.Last(stage);
        var machine = compiled.Modes[stage][run.Mode].Machine;
        if (unloadPending[machine] == stage && placer.Runs.TryUnload(stage, run.Mode, run.End, out var unload)
            && unload.End <= state.Horizon)
        {
            CommitUnload(stage, machine, unload, keys);
        }
    }

    private void CommitUnload(int stage, int machine, SchedulePart unload, ReadOnlySpan<int> keys)
    {
        unloadPending[machine] = None;
        if (TakesHandsToUnload(stage))
        {
            TakeHands(compiled.Modes[stage][unload.Mode], unload);
        }

        state.Take(machine, store.Last(stage).End, unload.End, FreeTime.NoPlace);
        store.Add(stage, [unload]);
        Finish(stage, unload.End, keys);
    }

    private bool TakesHandsToUnload(int stage) => compiled.UnloadItem[stage] >= 0;

    private void TakeHands(CompiledMode mode, SchedulePart part)
    {
        foreach (var station in mode.All)
        {
            state.Take(station, part.Start, part.End, FreeTime.NoPlace);
        }
    }

    private void UnloadMachinesWantedBy(int stage, ReadOnlySpan<int> keys)
    {
        foreach (var mode in compiled.Modes[stage])
        {
            UnloadIfPending(mode.Machine, keys);
            foreach (var station in mode.Others)
            {
                UnloadIfPending(station, keys);
            }
        }
    }

    private void UnloadIfPending(int machine, ReadOnlySpan<int> keys)
    {
        if (machine >= 0 && unloadPending[machine] != None)
        {
            PlaceUnload(unloadPending[machine], keys);
        }
    }

    private void Finish(int stage, int finish, ReadOnlySpan<int> keys)
    {
        times.Finishes[stage] = finish;
        foreach (var link in compiled.Problem.Graph.Outgoing(stage))
        {
            var next = compiled.LinkTo[link];
            if (--times.WaitingFor[next] == 0 && times.Starts[next] == None)
            {
                MakeReady(next, keys);
            }
        }

        if (compiled.GluedNext[stage] is >= 0 and var wait)
        {
            PlaceGlued(wait, finish, keys);
        }
    }

    private void PlaceGlued(int wait, int start, ReadOnlySpan<int> keys)
    {
        choice.SetWait(start, compiled.WaitEnd(wait, start));
        order.Add(wait);
        times.Starts[wait] = start;
        Commit(wait);
        Finish(wait, choice.Parts[^1].End, keys);
    }
}
