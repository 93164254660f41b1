namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// Serial generation: takes activities in the order of a list and gives each the earliest start that links and stations
/// leave. One instance makes many schedules, one after the other, and allocates nothing for any of them.
/// </summary>
/// <remarks>
/// J. E. Kelley, "The critical-path method: resources planning and scheduling", in Muth and Thompson, Industrial
/// Scheduling (1963); R. Kolisch, EJOR 90 (1996). Every schedule it makes is active, and some list makes a schedule with
/// the least end. It is an abstract class beside its one generic heir so that a search need not be compiled per profile.
/// </remarks>
internal abstract class ListDecoder
{
    /// <summary>Above so many units of time an activity, a list of events is shorter than a cell for each unit.</summary>
    private const int MostUnitsPerActivity = 64;

    /// <summary>When activities start, by index; good after a decode that came to its end.</summary>
    public abstract int[] Starts { get; }

    /// <summary>When they finish; one more entry is always 0.</summary>
    public abstract int[] Finishes { get; }

    /// <summary>The last finish of the last schedule.</summary>
    public int End { get; protected set; }

    /// <summary>Makes one schedule.</summary>
    /// <param name="order">Every activity once, each after those it waits for.</param>
    /// <param name="latest">By activity: the latest finish that is still of interest.</param>
    /// <returns>False where some activity would finish too late; then it stopped there.</returns>
    public abstract bool TryDecode(ReadOnlySpan<int> order, ReadOnlySpan<int> latest);

    /// <summary>The decoder whose profile suits the columns.</summary>
    public static ListDecoder For(PackedColumns columns) =>
        columns.Horizon <= MostUnitsPerActivity * (long)columns.Count
            ? new ListDecoder<UnitProfile>(columns, new UnitProfile(columns))
            : new ListDecoder<EventProfile>(columns, new EventProfile(columns));
}

/// <inheritdoc/>
internal sealed class ListDecoder<TProfile>(PackedColumns columns, TProfile profile) : ListDecoder
    where TProfile : struct, IProfile
{
    private readonly PackedItem[] items = columns.Items;
    private readonly int[] waitsFor = columns.WaitsFor;
    private readonly int[] lags = columns.Lags;
    private TProfile profile = profile;

    public override int[] Starts { get; } = new int[columns.Count];

    public override int[] Finishes { get; } = new int[columns.Count + 1];

    public override bool TryDecode(ReadOnlySpan<int> order, ReadOnlySpan<int> latest)
    {
        ref var room = ref profile;
        room.Clear();
        var end = 0;
        unchecked
        {
            // No sum overflows: the horizon is the sum of all durations and lags, and a problem's is at most 2^28.
            foreach (var activity in order)
            {
                ref readonly var item = ref items[activity];
                var start = EarliestByLinks(in item);
                if (item.NeedsRoom)
                {
                    start = room.EarliestFit(activity, start);
                    room.Take(activity, start);
                }

                var finish = start + item.Duration;
                if (finish > latest[activity])
                {
                    return false;
                }

                Starts[activity] = start;
                Finishes[activity] = finish;
                end = Math.Max(end, finish);
            }
        }

        End = end;
        return true;
    }

    private int EarliestByLinks(in PackedItem item)
    {
        unchecked
        {
            var earliest = 0;
            for (var at = item.FirstWait; at < item.EndWait; at += PackedColumns.LinkBlock)
            {
                var waits = waitsFor.AsSpan(at, PackedColumns.LinkBlock);
                var least = lags.AsSpan(at, PackedColumns.LinkBlock);
                var left = Math.Max(Finishes[waits[0]] + least[0], Finishes[waits[1]] + least[1]);
                var right = Math.Max(Finishes[waits[2]] + least[2], Finishes[waits[3]] + least[3]);
                earliest = Math.Max(earliest, Math.Max(left, right));
            }

            return earliest;
        }
    }
}
