namespace EpisodePlanner.Scheduling.Networks;

/// <summary>The walks along a network's order that give its dates and floats, each in O(activities + links).</summary>
/// <remarks>
/// J. E. Kelley, "Critical-path planning and scheduling: mathematical basis", Operations Research 9 (1961), with every
/// kind of link turned into a least distance between starts.
/// </remarks>
internal static class NetworkPasses
{
    /// <summary>The least starts, none below 0, that keep every link.</summary>
    public static long[] EarlyStarts(ActivityNetwork network)
    {
        var links = network.Columns;
        var starts = new long[network.Activities.Length];
        foreach (var activity in network.Order)
        {
            foreach (var link in links.Out[activity])
            {
                ref var next = ref starts[links.To[link]];
                next = Math.Max(next, starts[activity] + links.Weight[link]);
            }
        }

        return starts;
    }

    /// <summary>The greatest starts that keep every link and let everything finish by the end.</summary>
    public static long[] LateStarts(ActivityNetwork network, long end)
    {
        var links = network.Columns;
        var starts = new long[network.Activities.Length];
        for (var place = network.Order.Length - 1; place >= 0; place--)
        {
            var activity = network.Order[place];
            var latest = end - network.Activities[activity].Duration;
            foreach (var link in links.Out[activity])
                latest = Math.Min(latest, starts[links.To[link]] - links.Weight[link]);
            starts[activity] = latest;
        }

        return starts;
    }

    /// <summary>The least slack over the links out of each activity; up to the end where none leaves it.</summary>
    public static long[] FreeFloats(ActivityNetwork network, long[] earlyStarts, long end)
    {
        var floats = new long[earlyStarts.Length];
        for (var activity = 0; activity < floats.Length; activity++)
        {
            var leaving = network.Columns.Out[activity];
            var least = leaving.IsEmpty
                ? end - earlyStarts[activity] - network.Activities[activity].Duration
                : long.MaxValue;
            foreach (var link in leaving)
                least = Math.Min(least, Slack(network.Columns, earlyStarts, link));
            floats[activity] = least;
        }

        return floats;
    }

    /// <summary>How much further apart the early starts of a link's ends are than the link asks; 0 or more.</summary>
    public static long Slack(LinkColumns links, ReadOnlySpan<long> earlyStarts, int link) =>
        earlyStarts[links.To[link]] - earlyStarts[links.From[link]] - links.Weight[link];
}
