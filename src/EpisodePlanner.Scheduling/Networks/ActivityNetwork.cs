using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>
/// Activities with fixed durations and the links between them, free of calendars, stations and units: the network of
/// the textbooks. It has no circle, and all its dates are sure to fit 64 bits.
/// </summary>
/// <remarks>Activities and links are known by their dense indices, from 0, in the order given.</remarks>
public sealed class ActivityNetwork
{
    /// <summary>The most that all durations and lags of a network, without their signs, may add up to.</summary>
    /// <remarks>No date exceeds that sum, so every difference of dates and links fits 64 bits.</remarks>
    public const long LargestSpan = long.MaxValue / 4;

    private ActivityNetwork(
        ImmutableArray<NetworkActivity> activities,
        ImmutableArray<NetworkLink> links,
        LinkColumns columns,
        ImmutableArray<int> order)
    {
        Activities = activities;
        Links = links;
        Columns = columns;
        Order = order;
    }

    /// <summary>The activities, by activity index.</summary>
    public ImmutableArray<NetworkActivity> Activities { get; }

    /// <summary>The links, by link index. Two activities may have several links.</summary>
    public ImmutableArray<NetworkLink> Links { get; }

    /// <summary>All activity indices, so ordered that every link leads forward.</summary>
    public ImmutableArray<int> Order { get; }

    internal LinkColumns Columns { get; }

    /// <summary>Builds a network, or says everything that stands against it.</summary>
    /// <param name="activities">The activities; none at all is allowed.</param>
    /// <param name="links">The links, their ends as indices into <paramref name="activities"/>.</param>
    /// <param name="network">The network, or null where it is refused.</param>
    /// <param name="refusals">
    /// Empty, or the reasons: negative durations, unknown indices and kinds, too large a span, all at once; or, where
    /// there are none of these, one circle, even if there are more.
    /// </param>
    /// <returns>Whether there is a network.</returns>
    public static bool TryCreate(
        IEnumerable<NetworkActivity> activities,
        IEnumerable<NetworkLink> links,
        [NotNullWhen(true)] out ActivityNetwork? network,
        out ImmutableArray<NetworkRefusal> refusals)
    {
        ImmutableArray<NetworkActivity> ownActivities = [.. activities];
        ImmutableArray<NetworkLink> ownLinks = [.. links];
        refusals = NetworkChecks.Refusals(ownActivities, ownLinks);
        network = refusals.IsEmpty ? Build(ownActivities, ownLinks, out refusals) : null;
        return network is not null;
    }

    /// <summary>Indices of the links that leave an activity, in ascending order.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such activity.</exception>
    public ReadOnlySpan<int> LinksOutOf(int activity) => Columns.Out[activity];

    /// <summary>Indices of the links that reach an activity, in ascending order.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such activity.</exception>
    public ReadOnlySpan<int> LinksInto(int activity) => Columns.Into[activity];

    private static ActivityNetwork? Build(
        ImmutableArray<NetworkActivity> activities,
        ImmutableArray<NetworkLink> links,
        out ImmutableArray<NetworkRefusal> refusals)
    {
        var columns = new LinkColumns(activities, links);
        var order = TopologicalOrder.Find(activities.Length, columns, out var circle);
        refusals = circle.IsEmpty
            ? []
            : [new LinkCircle(circle, [.. circle.Select(member => activities[member].Name)])];
        return circle.IsEmpty ? new ActivityNetwork(activities, links, columns, order) : null;
    }
}
