using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>Orders activities so that every link leads forward, or finds a circle that forbids it.</summary>
/// <remarks>A. B. Kahn, "Topological sorting of large networks", Communications of the ACM 5 (1962).</remarks>
internal static class TopologicalOrder
{
    /// <summary>The order, or a circle where there is no order.</summary>
    /// <param name="activities">How many activities there are.</param>
    /// <param name="links">The links between them.</param>
    /// <param name="circle">
    /// The members of one circle in link order, the lowest index first; empty where there is an order.
    /// </param>
    public static ImmutableArray<int> Find(int activities, LinkColumns links, out ImmutableArray<int> circle)
    {
        var waitsFor = new int[activities];
        var order = new int[activities];
        var placed = PlaceAll(links, waitsFor, order);
        circle = placed == activities ? [] : CircleAmong(waitsFor, links);
        return ImmutableCollectionsMarshal.AsImmutableArray(order);
    }

    /// <summary>
    /// Places whatever waits for nothing, first come first served; afterwards only activities in a circle, or behind
    /// one, still wait.
    /// </summary>
    private static int PlaceAll(LinkColumns links, int[] waitsFor, int[] order)
    {
        var placed = 0;
        for (var activity = 0; activity < waitsFor.Length; activity++)
        {
            waitsFor[activity] = links.Into[activity].Length;
            if (waitsFor[activity] == 0)
                order[placed++] = activity;
        }

        for (var reached = 0; reached < placed; reached++)
        {
            foreach (var link in links.Out[order[reached]])
            {
                if (--waitsFor[links.To[link]] == 0)
                    order[placed++] = links.To[link];
            }
        }

        return placed;
    }

    /// <summary>
    /// Whatever still waits has something that still waits before it, so walking back from any such activity must
    /// meet itself; what lies between the two meetings is a circle.
    /// </summary>
    private static ImmutableArray<int> CircleAmong(int[] waitsFor, LinkColumns links)
    {
        var walk = new List<int>();
        var placeInWalk = new Dictionary<int, int>();
        var activity = Array.FindIndex(waitsFor, count => count > 0);
        while (placeInWalk.TryAdd(activity, walk.Count))
        {
            walk.Add(activity);
            activity = WaitingBefore(activity, waitsFor, links);
        }

        var circle = walk[placeInWalk[activity]..];
        circle.Reverse();
        var first = circle.IndexOf(circle.Min());
        return [.. circle[first..], .. circle[..first]];
    }

    private static int WaitingBefore(int activity, int[] waitsFor, LinkColumns links)
    {
        foreach (var link in links.Into[activity])
        {
            if (waitsFor[links.From[link]] > 0)
                return links.From[link];
        }

        throw new InvalidOperationException($"Activity {activity} waits for nothing.");
    }
}
