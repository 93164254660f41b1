using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>The links as columns, by link index, with the links out of and into each activity.</summary>
internal sealed class LinkColumns
{
    /// <summary>Spreads links whose indices and kinds are known to be good.</summary>
    public LinkColumns(ImmutableArray<NetworkActivity> activities, ImmutableArray<NetworkLink> links)
    {
        From = new int[links.Length];
        To = new int[links.Length];
        Weight = new long[links.Length];
        for (var index = 0; index < links.Length; index++)
        {
            var link = links[index];
            From[index] = link.From;
            To[index] = link.To;
            Weight[index] = link.StartDifference(activities[link.From].Duration, activities[link.To].Duration);
        }

        Out = LinkIndex.By(From, activities.Length);
        Into = LinkIndex.By(To, activities.Length);
    }

    public int[] From { get; }

    public int[] To { get; }

    /// <summary>Least distance from the start of From to the start of To.</summary>
    public long[] Weight { get; }

    public LinkIndex Out { get; }

    public LinkIndex Into { get; }
}
