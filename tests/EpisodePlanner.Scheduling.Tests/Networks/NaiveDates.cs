using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Networks;

/// <summary>
/// Early starts found without an order or a formula of the library: push starts later, link by link, until every
/// promise holds (R. Bellman, "On a routing problem", Quarterly of Applied Mathematics 16 (1958)).
/// </summary>
internal static class NaiveDates
{
    /// <summary>Early starts where one activity may not start before a given moment.</summary>
    public static long[] EarlyStarts(DrawnNetwork network, int held = 0, long heldUntil = 0)
    {
        var starts = new long[network.Durations.Length];
        starts[held] = heldUntil;
        while (network.Links.Any(link => Missing(link, network.Durations, starts) > 0))
        {
            foreach (var link in network.Links)
                starts[link.To] += Math.Max(0, Missing(link, network.Durations, starts));
        }

        return starts;
    }

    public static long End(DrawnNetwork network, long[] starts) =>
        starts.Select((start, activity) => start + network.Durations[activity]).Max();

    /// <summary>How much too early the later end of a link lies.</summary>
    private static long Missing(NetworkLink link, long[] durations, long[] starts)
    {
        var finishFrom = starts[link.From] + durations[link.From];
        var finishTo = starts[link.To] + durations[link.To];
        return link.Kind switch
        {
            LinkKind.After => finishFrom + link.Lag - starts[link.To],
            LinkKind.TogetherStart => starts[link.From] + link.Lag - starts[link.To],
            LinkKind.TogetherFinish => finishFrom + link.Lag - finishTo,
            LinkKind.StartToFinish => starts[link.From] + link.Lag - finishTo,
            _ => throw new ArgumentOutOfRangeException(nameof(link)),
        };
    }
}
