using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>What decoding needs to know of one activity, side by side in memory.</summary>
/// <param name="Duration">How long it lasts.</param>
/// <param name="NeedsRoom">Whether it takes any station for any time.</param>
/// <param name="FirstWait">Where its links begin in <see cref="PackedColumns.WaitsFor"/>.</param>
/// <param name="EndWait">Where they end, excluded.</param>
internal readonly record struct PackedItem(int Duration, bool NeedsRoom, int FirstWait, int EndWait);

/// <summary>
/// A plain problem in columns. Activities carry new indices here, in an order in which every link leads forward, so that
/// ties broken by index keep every link.
/// </summary>
internal sealed class PackedColumns
{
    /// <summary>Links stand in blocks of this length; what is missing points at a place that is always finished at 0.</summary>
    public const int LinkBlock = 4;

    private PackedColumns(PackedItem[] items, int[] waitsFor, int[] lags, PackedDemands demands, int horizon)
    {
        Items = items;
        WaitsFor = waitsFor;
        Lags = lags;
        Demands = demands;
        Horizon = horizon;
    }

    /// <summary>How many activities there are.</summary>
    public int Count => Items.Length;

    /// <summary>By activity.</summary>
    public PackedItem[] Items { get; }

    /// <summary>Activities waited for, in blocks; <see cref="Count"/> stands for none.</summary>
    public int[] WaitsFor { get; }

    /// <summary>The least lags of these links.</summary>
    public int[] Lags { get; }

    /// <summary>What activities take.</summary>
    public PackedDemands Demands { get; }

    /// <summary>No schedule made by serial generation ends later.</summary>
    public int Horizon { get; }

    /// <summary>How many links an activity waits for.</summary>
    public int WaitsForCount(int activity)
    {
        var item = Items[activity];
        var end = item.EndWait;
        while (end > item.FirstWait && WaitsFor[end - 1] == Count)
        {
            end--;
        }

        return end - item.FirstWait;
    }

    /// <summary>The problem as it is; its activities in the order of <see cref="ActivityNetwork.Order"/>.</summary>
    public static PackedColumns Forward(PackedProblem problem) =>
        Build(problem, [.. problem.Network.Order], link => (link.From, link.To));

    /// <summary>The problem in reversed time: activity i here is activity Count − 1 − i of <see cref="Forward"/>.</summary>
    public static PackedColumns Mirrored(PackedProblem problem) =>
        Build(problem, [.. problem.Network.Order.Reverse()], link => (link.To, link.From));

    private static PackedColumns Build(PackedProblem problem, int[] order, Func<NetworkLink, (int From, int To)> ends)
    {
        var places = new int[order.Length];
        for (var place = 0; place < order.Length; place++)
        {
            places[order[place]] = place;
        }

        var demands = PackedDemands.Of(problem, order);
        var items = new PackedItem[order.Length];
        var (waitsFor, lags) = (new List<int>(), new List<int>());
        var into = problem.Network.Links.ToLookup(link => ends(link).To);
        for (var place = 0; place < order.Length; place++)
        {
            var first = waitsFor.Count;
            waitsFor.AddRange(into[order[place]].Select(link => places[ends(link).From]));
            lags.AddRange(into[order[place]].Select(link => (int)link.Lag));
            FillBlock(waitsFor, order.Length);
            FillBlock(lags, 0);
            var duration = (int)problem.Network.Activities[order[place]].Duration;
            items[place] = new PackedItem(duration, duration > 0 && demands.TakesAny(place), first, waitsFor.Count);
        }

        return new PackedColumns(items, [.. waitsFor], [.. lags], demands, problem.Horizon);
    }

    private static void FillBlock(List<int> column, int filler)
    {
        while (column.Count % LinkBlock != 0)
        {
            column.Add(filler);
        }
    }
}
