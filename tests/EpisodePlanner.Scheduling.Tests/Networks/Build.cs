using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Networks;

/// <summary>Short ways to networks and refusals.</summary>
internal static class Build
{
    public static NetworkTimes Times(NetworkActivity[] activities, params NetworkLink[] links)
    {
        Assert.True(
            ActivityNetwork.TryCreate(activities, links, out var network, out var refusals),
            string.Join(' ', refusals.Select(refusal => refusal.Sentence)));
        Assert.Empty(refusals);
        return NetworkTimes.Of(network);
    }

    public static NetworkTimes Times(long[] durations, params NetworkLink[] links) =>
        Times(Activities(durations), links);

    public static ImmutableArray<NetworkRefusal> Refusals(long[] durations, params NetworkLink[] links)
    {
        Assert.False(ActivityNetwork.TryCreate(Activities(durations), links, out var network, out var refusals));
        Assert.Null(network);
        return refusals;
    }

    public static NetworkLink After(int from, int to) => new(from, to, LinkKind.After);

    /// <summary>Each activity after the one before it.</summary>
    public static NetworkLink[] Chain(int activities) =>
        [.. Enumerable.Range(1, activities - 1).Select(activity => After(activity - 1, activity))];

    /// <summary>Activities named a0, a1, a2 and so on.</summary>
    private static NetworkActivity[] Activities(long[] durations) =>
        [.. durations.Select((duration, index) => new NetworkActivity($"a{index}", duration))];
}
