using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>
/// The dates and floats of an <see cref="ActivityNetwork"/> that starts at 0 and may use as many hands and machines as
/// it likes. Arrays are by activity index, in the unit of the durations; work occupies [start, finish).
/// </summary>
public sealed class NetworkTimes
{
    private NetworkTimes(ActivityNetwork network)
    {
        Network = network;
        var early = NetworkPasses.EarlyStarts(network);
        EarlyStart = Wrap(early);
        EarlyFinish = Finishes(early);
        End = EarlyFinish.IsEmpty ? 0 : EarlyFinish.Max();

        var late = NetworkPasses.LateStarts(network, End);
        LateStart = Wrap(late);
        LateFinish = Finishes(late);
        TotalFloat = Wrap([.. late.Zip(early, (latest, earliest) => latest - earliest)]);
        FreeFloat = Wrap(NetworkPasses.FreeFloats(network, early, End));

        var critical = CriticalTrace.Mark(network, this);
        Critical = [.. network.Order.Where(activity => critical[activity])];
        CriticalPath = CriticalTrace.Path(network, this);
    }

    /// <summary>What was analysed.</summary>
    public ActivityNetwork Network { get; }

    /// <summary>The end of the project: the greatest early finish; 0 where there are no activities.</summary>
    public long End { get; }

    /// <summary>The earliest starts that keep every link; never below 0, even where a link would allow it.</summary>
    public ImmutableArray<long> EarlyStart { get; }

    /// <summary>Early start plus duration.</summary>
    public ImmutableArray<long> EarlyFinish { get; }

    /// <summary>The latest starts that keep every link and do not move <see cref="End"/>.</summary>
    public ImmutableArray<long> LateStart { get; }

    /// <summary>Late start plus duration.</summary>
    public ImmutableArray<long> LateFinish { get; }

    /// <summary>
    /// How far an activity may slip, alone, without moving <see cref="End"/>: late start less early start. Never
    /// negative.
    /// </summary>
    public ImmutableArray<long> TotalFloat { get; }

    /// <summary>
    /// How far an activity may slip without moving any successor: the least slack over its outgoing links, and
    /// <see cref="End"/> less early finish where there are none. An activity that is tied only by its start may have
    /// more free float than total float.
    /// </summary>
    public ImmutableArray<long> FreeFloat { get; }

    /// <summary>
    /// Indices of every activity that fixes <see cref="End"/>, each after those that drive it. Found by tracing driving
    /// links back from whatever finishes at the end; parallel paths are all in it.
    /// </summary>
    public ImmutableArray<int> Critical { get; }

    /// <summary>
    /// One unbroken critical path, first step first, empty only where there are no activities. Of several the one that
    /// is met first: by lowest activity index at the end, by lowest link index on the way back.
    /// </summary>
    public ImmutableArray<CriticalStep> CriticalPath { get; }

    /// <summary>Computes the times, in O(activities + links).</summary>
    public static NetworkTimes Of(ActivityNetwork network) => new(network);

    /// <summary>
    /// How much further apart the early starts of a link's two ends lie than the link asks for; 0 or more.
    /// </summary>
    /// <exception cref="IndexOutOfRangeException">There is no such link.</exception>
    public long Slack(int link) => NetworkPasses.Slack(Network.Columns, EarlyStart.AsSpan(), link);

    /// <summary>Whether a link has no slack, so that its later end could not start sooner because of it.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such link.</exception>
    public bool IsDriving(int link) => Slack(link) == 0;

    private ImmutableArray<long> Finishes(long[] starts) =>
        Wrap([.. starts.Zip(Network.Activities, (start, activity) => start + activity.Duration)]);

    private static ImmutableArray<long> Wrap(long[] values) => ImmutableCollectionsMarshal.AsImmutableArray(values);
}
