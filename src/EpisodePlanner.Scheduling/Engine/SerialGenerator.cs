using System.Runtime.InteropServices;

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
    private readonly int[] waitingFor;
    private readonly int[] starts;
    private readonly int[] finishes;
    private readonly PartStore store;
    private readonly int[] unloadPending;
    private readonly List<int> order = [];
    private readonly PriorityQueue<int, long> ready = new();
    private List<SchedulePart> best = [];
    private List<SchedulePart> trial = [];

    public SerialGenerator(CompiledProblem compiled)
    {
        this.compiled = compiled;
        state = new BenchState(compiled);
        placer = new StagePlacer(state);
        waitingFor = new int[compiled.StageCount];
        starts = new int[compiled.StageCount];
        finishes = new int[compiled.StageCount];
        store = new PartStore(compiled.StageCount);
        unloadPending = new int[compiled.Problem.Stations.Count];
    }

    /// <summary>When the stages of the last schedule start; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Starts => starts;

    /// <summary>When they are finished; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Finishes => finishes;

    /// <summary>Makes one schedule.</summary>
    /// <param name="keys">By stage, then by stage once more for the unloads of runs: lower goes first.</param>
    public void Generate(ReadOnlySpan<int> keys)
    {
        Reset(keys);
        while (ready.TryDequeue(out var item, out _))
        {
            if (item >= compiled.StageCount)
            {
                PlaceUnload(item - compiled.StageCount, keys);
            }
            else if (starts[item] == None)
            {
                Place(item, keys);
            }
        }
    }

    /// <summary>The last schedule as an immutable result.</summary>
    public BenchSchedule ToSchedule()
    {
        var (first, parts) = store.ToColumns(finishes);
        return new BenchSchedule(compiled.Problem, first, parts, [.. order.Where(stage => finishes[stage] != None)]);
    }

    private void Reset(ReadOnlySpan<int> keys)
    {
        state.Reset();
        store.Clear();
        order.Clear();
        ready.Clear();
        starts.AsSpan().Fill(None);
        finishes.AsSpan().Fill(None);
        unloadPending.AsSpan().Fill(None);
        compiled.WaitingFor.CopyTo(waitingFor, 0);
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            if (waitingFor[stage] == 0)
            {
                // Work that is going on stays where it is, so it is placed before anything else.
                ready.Enqueue(stage, Priority(compiled.Begun[stage] ? int.MinValue : keys[stage], stage));
            }
        }
    }

    /// <summary>By key, then by item.</summary>
    private static long Priority(int key, int item) => ((long)key << 32) | (uint)item;

    private void Place(int stage, ReadOnlySpan<int> keys)
    {
        UnloadMachinesWantedBy(stage, keys);
        if (!compiled.TryBounds(stage, starts, finishes, out var earliest, out var leastFinish) || !TryBestMode(stage, earliest, leastFinish))
        {
            return;
        }

        order.Add(stage);
        starts[stage] = best[0].Start;
        if (compiled.Kinds[stage] == StageKind.Run)
        {
            CommitRun(stage, keys);
            return;
        }

        Commit(stage);
        Finish(stage, best[^1].End, keys);
    }

    private bool TryBestMode(int stage, int earliest, int leastFinish)
    {
        var found = false;
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, earliest, leastFinish, trial) && (!found || IsBetter(trial, best)))
            {
                (best, trial) = (trial, best);
                found = true;
            }
        }

        return found;
    }

    private static bool IsBetter(List<SchedulePart> left, List<SchedulePart> right) =>
        (left[^1].End, left[0].Start).CompareTo((right[^1].End, right[0].Start)) < 0;

    private void Commit(int stage)
    {
        var parts = CollectionsMarshal.AsSpan(best);
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
        var (load, run, unload) = (best[0], best[1], best[2]);
        var mode = compiled.Modes[stage][load.Mode];
        if (compiled.Problem.Stages[stage].LoadTakesHands)
        {
            TakeHands(mode, load);
        }

        var mustFollowNow = state.Taken(mode.Machine).NextStart(run.End) < int.MaxValue;
        state.Take(mode.Machine, load.Start, run.End, FreeTime.NoPlace);
        store.Add(stage, [load, run]);
        if (mustFollowNow || !TakesHandsToUnload(stage))
        {
            CommitUnload(stage, mode.Machine, unload, keys);
            return;
        }

        unloadPending[mode.Machine] = stage;
        ready.Enqueue(compiled.StageCount + stage, Priority(keys[compiled.StageCount + stage], compiled.StageCount + stage));
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

    private bool TakesHandsToUnload(int stage)
    {
        var spec = compiled.Problem.Stages[stage];
        return spec.UnloadTakesHands && spec.UnloadMinutes > 0;
    }

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
        finishes[stage] = finish;
        foreach (var link in compiled.Problem.Graph.Outgoing(stage))
        {
            var next = compiled.LinkTo[link];
            if (--waitingFor[next] == 0 && starts[next] == None)
            {
                ready.Enqueue(next, Priority(keys[next], next));
            }
        }

        if (compiled.GluedNext[stage] is >= 0 and var wait)
        {
            PlaceGlued(wait, finish, keys);
        }
    }

    private void PlaceGlued(int wait, int start, ReadOnlySpan<int> keys)
    {
        best.Clear();
        best.Add(new SchedulePart(PartKind.Wait, start, placer.WaitEnd(wait, start), 0));
        order.Add(wait);
        starts[wait] = start;
        Commit(wait);
        Finish(wait, best[^1].End, keys);
    }
}
