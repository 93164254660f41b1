namespace EpisodePlanner.Scheduling;

/// <summary>The links of stages in columns: incoming and outgoing by stage, and a topological order.</summary>
internal sealed class StageGraph
{
    private StageGraph(int[] firstIn, int[] inLinks, int[] firstOut, int[] outLinks, int[] order, IReadOnlyList<int> circle)
    {
        FirstIn = firstIn;
        InLinks = inLinks;
        FirstOut = firstOut;
        OutLinks = outLinks;
        Order = order;
        Circle = circle;
    }

    /// <summary>Stage i's incoming links stand at FirstIn[i] to FirstIn[i + 1] of <see cref="InLinks"/>.</summary>
    public int[] FirstIn { get; }

    public int[] InLinks { get; }

    public int[] FirstOut { get; }

    public int[] OutLinks { get; }

    /// <summary>Every stage after those it waits for; lower indices first where free to choose.</summary>
    public int[] Order { get; }

    /// <summary>Stages that wait for each other, in order around; empty where there is no circle.</summary>
    public IReadOnlyList<int> Circle { get; }

    public ReadOnlySpan<int> Incoming(int stage) => InLinks.AsSpan(FirstIn[stage], FirstIn[stage + 1] - FirstIn[stage]);

    public ReadOnlySpan<int> Outgoing(int stage) => OutLinks.AsSpan(FirstOut[stage], FirstOut[stage + 1] - FirstOut[stage]);

    public static StageGraph Create(int stages, IReadOnlyList<BenchLink> links)
    {
        var (firstIn, inLinks) = Bucket(stages, links, link => link.To);
        var (firstOut, outLinks) = Bucket(stages, links, link => link.From);
        var order = SortTopologically(stages, links, firstIn, firstOut, outLinks);
        var circle = order.Length == stages ? [] : FindCircle(stages, links, order, firstIn, inLinks);
        return new StageGraph(firstIn, inLinks, firstOut, outLinks, order, circle);
    }

    private static (int[] First, int[] Members) Bucket(int stages, IReadOnlyList<BenchLink> links, Func<BenchLink, int> key)
    {
        var first = new int[stages + 1];
        foreach (var link in links)
        {
            first[key(link) + 1]++;
        }

        for (var i = 0; i < stages; i++)
        {
            first[i + 1] += first[i];
        }

        var next = first.ToArray();
        var members = new int[links.Count];
        for (var l = 0; l < links.Count; l++)
        {
            members[next[key(links[l])]++] = l;
        }

        return (first, members);
    }

    private static int[] SortTopologically(
        int stages, IReadOnlyList<BenchLink> links, int[] firstIn, int[] firstOut, int[] outLinks)
    {
        var waitingFor = new int[stages];
        var ready = new PriorityQueue<int, int>();
        for (var i = 0; i < stages; i++)
        {
            waitingFor[i] = firstIn[i + 1] - firstIn[i];
            if (waitingFor[i] == 0)
            {
                ready.Enqueue(i, i);
            }
        }

        var order = new List<int>(stages);
        while (ready.TryDequeue(out var stage, out _))
        {
            order.Add(stage);
            for (var k = firstOut[stage]; k < firstOut[stage + 1]; k++)
            {
                var next = links[outLinks[k]].To;
                if (--waitingFor[next] == 0)
                {
                    ready.Enqueue(next, next);
                }
            }
        }

        return [.. order];
    }

    // Every stage left out of the order waits for another one left out; walking back must come round.
    private static List<int> FindCircle(
        int stages, IReadOnlyList<BenchLink> links, int[] order, int[] firstIn, int[] inLinks)
    {
        var left = Enumerable.Range(0, stages).Except(order).ToHashSet();
        var walk = new List<int>();
        var seenAt = new Dictionary<int, int>();
        var stage = left.Min();
        while (seenAt.TryAdd(stage, walk.Count))
        {
            walk.Add(stage);
            stage = inLinks[firstIn[stage]..firstIn[stage + 1]].Select(l => links[l].From).First(left.Contains);
        }

        var circle = walk[seenAt[stage]..];
        circle.Reverse();
        return circle;
    }
}
