namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Results that are wanted by a date, and stages whose stations close for good: what serial generation should work
/// towards, one after the other. A list of targets becomes keys: every stage ranks with the first target that needs it.
/// </summary>
internal sealed class Targets
{
    private readonly CompiledProblem compiled;
    private readonly int[] stages;
    private readonly long[] due;
    private readonly bool[] firm;
    private readonly int[] group;
    private readonly long[] time;
    private readonly long[] latest;
    private readonly int[] before;
    private readonly int[] stagesByLateStart;
    private readonly int[] ranks;
    private readonly int[] stack;
    private readonly int[] places;

    /// <summary>Finds the targets of a problem.</summary>
    /// <param name="compiled">The problem.</param>
    /// <param name="lateStart">By stage: the latest start that keeps due dates and open hours.</param>
    public Targets(CompiledProblem compiled, int[] lateStart)
    {
        this.compiled = compiled;
        stagesByLateStart = [.. Enumerable.Range(0, compiled.StageCount).OrderBy(stage => lateStart[stage])];
        var chances = new LastChances(compiled);
        var wanted = Enumerable.Range(0, compiled.StageCount)
            .Select(stage => (Stage: stage, Due: chances.DueOf(stage), Firm: compiled.Problem.Stages[stage].DueIsFirm || chances.IsLast(stage)))
            .Where(target => target.Due < int.MaxValue)
            .OrderBy(target => target.Due)
            .ThenBy(target => target.Stage)
            .ToList();
        stages = [.. wanted.Select(target => target.Stage)];
        due = [.. wanted.Select(target => (long)target.Due)];
        firm = [.. wanted.Select(target => target.Firm)];
        group = [.. stages.Select(stage => compiled.Problem.Stages[stage].DueGroup)];
        (ranks, stack, places) = (new int[compiled.StageCount], new int[compiled.StageCount], new int[Count + 2]);
        WriteRanks([.. Enumerable.Range(0, Count)]);
        time = Times(ranks);
        latest = LatestStarts(ranks, lateStart);
        before = BeforeInGroup();
    }

    public int Count => stages.Length;

    /// <summary>Whether one target may not be put before another: they are of one group and it is due later.</summary>
    public bool MustFollow(int later, int earlier) => group[later] >= 0 && group[later] == group[earlier] && later > earlier;

    /// <summary>
    /// Targets by modified due dates (Baker and Bertrand 1982): the one next for which the later of its due date and its
    /// earliest end is least; but a firm one goes first where it would otherwise come too late.
    /// </summary>
    public int[] ByModifiedDueDate()
    {
        var left = new SortedSet<int>(Enumerable.Range(0, Count));
        var order = new int[Count];
        var now = 0L;
        for (var place = 0; place < Count; place++)
        {
            order[place] = Next(left, now);
            left.Remove(order[place]);
            now += time[order[place]];
        }

        return order;
    }

    /// <summary>Firm targets by due date, then the others as they stand in an order.</summary>
    public int[] FirmFirst(int[] order)
    {
        var pulled = new HashSet<int>();
        var result = new List<int>(Count);
        foreach (var target in Enumerable.Range(0, Count).Where(target => firm[target]))
        {
            result.AddRange(Enumerable.Range(0, Count).Where(other => (other == target || MustFollow(target, other)) && pulled.Add(other)));
        }

        return [.. result, .. order.Where(target => !pulled.Contains(target))];
    }

    /// <summary>Writes keys for an order of targets; among the stages of one target those with the least time go first.</summary>
    public void Write(ReadOnlySpan<int> order, Span<int> keys)
    {
        WriteRanks(order);
        places.AsSpan().Clear();
        foreach (var stage in stagesByLateStart)
        {
            places[Math.Min(ranks[stage], Count) + 1]++;
        }

        for (var i = 0; i <= Count; i++)
        {
            places[i + 1] += places[i];
        }

        foreach (var stage in stagesByLateStart)
        {
            keys[stage] = places[Math.Min(ranks[stage], Count)]++;
            if (compiled.UnloadItem[stage] is >= 0 and var unload)
            {
                keys[unload] = keys[stage];
            }
        }
    }

    private int Next(SortedSet<int> left, long now)
    {
        var (soft, least) = (-1, long.MaxValue);
        foreach (var target in left)
        {
            var end = Math.Max(due[target], now + time[target]);
            if (end < least && FirstOfItsGroup(target, left) == target)
            {
                (soft, least) = (target, end);
            }
        }

        foreach (var target in left)
        {
            if (firm[target] && target != soft && ComesTooLateAfter(soft, target, left, now))
            {
                return FirstOfItsGroup(target, left);
            }
        }

        return soft;
    }

    /// <summary>
    /// Whether taking a target next makes a firm one late that is in time without it: by the work before it, or because
    /// its first stage could not start late enough any more.
    /// </summary>
    private bool ComesTooLateAfter(int next, int firmOne, SortedSet<int> left, long now)
    {
        var end = now;
        foreach (var target in left)
        {
            end += firm[target] && target != next && target <= firmOne ? time[target] : 0;
        }

        var inTime = end <= due[firmOne] && now <= latest[firmOne];
        return inTime && (end + time[next] > due[firmOne] || now + time[next] > latest[firmOne]);
    }

    private int FirstOfItsGroup(int target, SortedSet<int> left)
    {
        var first = target;
        while (before[first] >= 0 && left.Contains(before[first]))
        {
            first = before[first];
        }

        return first;
    }

    /// <summary>By target: the one of its group that is due before it; −1 for none.</summary>
    private int[] BeforeInGroup()
    {
        var last = new Dictionary<int, int>();
        var result = new int[Count];
        for (var target = 0; target < Count; target++)
        {
            result[target] = group[target] >= 0 ? last.GetValueOrDefault(group[target], -1) : -1;
            last[group[target]] = target;
        }

        return result;
    }

    /// <summary>By stage: the place in the order of the first target that needs it; last where none does.</summary>
    private void WriteRanks(ReadOnlySpan<int> order)
    {
        ranks.AsSpan().Fill(int.MaxValue);
        for (var place = 0; place < order.Length; place++)
        {
            var open = 0;
            Open(stages[order[place]], place, ref open);
            while (open > 0)
            {
                foreach (var link in compiled.Problem.Graph.Incoming(stack[--open]))
                {
                    Open(compiled.LinkFrom[link], place, ref open);
                }
            }
        }
    }

    private void Open(int stage, int place, ref int open)
    {
        if (ranks[stage] == int.MaxValue)
        {
            ranks[stage] = place;
            stack[open++] = stage;
        }
    }

    /// <summary>By target: the elapsed minutes that the work takes which no target due earlier needs.</summary>
    private long[] Times(int[] rank)
    {
        var work = new long[Count];
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            if (rank[stage] < Count && compiled.Kinds[stage] == StageKind.Attended)
            {
                work[rank[stage]] += compiled.Minutes[stage];
            }
        }

        var present = Math.Max(1, compiled.Problem.Presence.TotalWork);
        return [.. work.Select(minutes => minutes * compiled.Problem.Horizon / present)];
    }

    /// <summary>By target: the latest start of the first stage that no target due earlier needs.</summary>
    private long[] LatestStarts(int[] rank, int[] lateStart)
    {
        var starts = Enumerable.Repeat(long.MaxValue, Count).ToArray();
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            if (rank[stage] < Count && compiled.Kinds[stage] != StageKind.Wait)
            {
                starts[rank[stage]] = Math.Min(starts[rank[stage]], lateStart[stage]);
            }
        }

        return starts;
    }
}
