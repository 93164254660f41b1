using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>What must hold of activities and links one by one, before the shape of the whole is looked at.</summary>
internal static class NetworkChecks
{
    /// <summary>Every reason against these activities and links, circles left aside.</summary>
    public static ImmutableArray<NetworkRefusal> Refusals(
        ImmutableArray<NetworkActivity> activities, ImmutableArray<NetworkLink> links)
    {
        var refusals = ImmutableArray.CreateBuilder<NetworkRefusal>();
        for (var activity = 0; activity < activities.Length; activity++)
        {
            if (activities[activity].Duration < 0)
                refusals.Add(new NegativeDuration(activity, activities[activity].Name, activities[activity].Duration));
        }

        for (var link = 0; link < links.Length; link++)
            AddLinkRefusals(link, links[link], activities.Length, refusals);

        if (Span(activities, links) > ActivityNetwork.LargestSpan)
            refusals.Add(new SpanTooLarge());

        return refusals.ToImmutable();
    }

    private static void AddLinkRefusals(
        int index, NetworkLink link, int activities, ImmutableArray<NetworkRefusal>.Builder refusals)
    {
        if (!IsKnown(link.From, activities))
            refusals.Add(new UnknownActivity(index, link.From, activities));
        if (!IsKnown(link.To, activities))
            refusals.Add(new UnknownActivity(index, link.To, activities));
        if (link.Kind is < LinkKind.After or > LinkKind.StartToFinish)
            refusals.Add(new UnknownLinkKind(index, link.Kind));
    }

    private static bool IsKnown(int activity, int activities) => activity >= 0 && activity < activities;

    /// <summary>Durations and lags without their signs; 128 bits hold the sum of any two lists.</summary>
    private static Int128 Span(ImmutableArray<NetworkActivity> activities, ImmutableArray<NetworkLink> links)
    {
        Int128 span = 0;
        foreach (var activity in activities)
            span += Int128.Abs(activity.Duration);
        foreach (var link in links)
            span += Int128.Abs(link.Lag);
        return span;
    }
}
