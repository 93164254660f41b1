using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>
/// Follows driving links, those without slack, backwards from the activities that finish last. This finds what fixes
/// the end by its cause, so it stays true where float is measured in other ways.
/// </summary>
internal static class CriticalTrace
{
    /// <summary>For each activity, whether driving links lead from it to something that finishes last.</summary>
    public static bool[] Mark(ActivityNetwork network, NetworkTimes times)
    {
        var critical = new bool[network.Activities.Length];
        for (var place = network.Order.Length - 1; place >= 0; place--)
        {
            var activity = network.Order[place];
            critical[activity] |= times.EarlyFinish[activity] == times.End;
            if (!critical[activity])
                continue;
            foreach (var link in network.LinksInto(activity))
                critical[network.Columns.From[link]] |= times.IsDriving(link);
        }

        return critical;
    }

    /// <summary>
    /// One unbroken path, first step first. Where several activities finish last, or several links drive, the lowest
    /// index is followed.
    /// </summary>
    public static ImmutableArray<CriticalStep> Path(ActivityNetwork network, NetworkTimes times)
    {
        var steps = new List<CriticalStep>();
        var activity = times.EarlyFinish.IndexOf(times.End);
        while (activity >= 0)
        {
            var link = DrivingLinkInto(activity, network, times);
            steps.Add(new CriticalStep(activity, link));
            activity = link is { } driving ? network.Columns.From[driving] : -1;
        }

        steps.Reverse();
        return [.. steps];
    }

    private static int? DrivingLinkInto(int activity, ActivityNetwork network, NetworkTimes times)
    {
        foreach (var link in network.LinksInto(activity))
        {
            if (times.IsDriving(link))
                return link;
        }

        return null;
    }
}
