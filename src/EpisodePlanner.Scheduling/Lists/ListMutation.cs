using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Scheduling.Lists;

/// <summary>
/// Moves some activities of a list a little. How many adapts itself: more where lists keep leading to schedules that
/// were met before, fewer where they don't.
/// </summary>
internal sealed class ListMutation
{
    private const int Certain = 1 << 16;
    private const int First = Certain / 50;
    private readonly int least;
    private const int Most = Certain / 2;

    /// <summary>An activity moves by at most so many places.</summary>
    private const int Farthest = 20;

    private readonly PackedColumns? columns;
    private readonly KeySorter sorter;
    private readonly SplitMix dice;
    private readonly int[] order;
    private int strength = First;

    /// <param name="count">How many items a list has.</param>
    /// <param name="columns">The links that a list must keep; null where its decoder sees to that.</param>
    /// <param name="dice">Where chance comes from.</param>
    public ListMutation(int count, PackedColumns? columns, SplitMix dice)
    {
        (this.columns, this.dice) = (columns, dice);
        least = (int)Math.Min(Certain / 16, 64L * Certain / Math.Max(1, (long)count * count));
        sorter = new KeySorter(count);
        order = new int[count];
    }

    /// <summary>Learns from the last list whether it led to something met before.</summary>
    public void Learn(bool wasMet) => strength = wasMet
        ? Math.Min(Most, strength + (strength / 10))
        : Math.Max(least, strength - (strength / 50));

    /// <summary>Replaces keys by places in the list, some of them moved, so that every link that it must keep is kept.</summary>
    public void Move(Span<int> keys)
    {
        sorter.Sort(keys, order);
        for (var place = 0; place < order.Length; place++)
        {
            keys[order[place]] = place;
        }

        foreach (ref var key in keys)
        {
            if (dice.Below(Certain) < strength)
            {
                key += dice.Below((2 * Farthest) + 1) - Farthest;
            }
        }

        if (columns is not null)
        {
            KeepLinks(columns, keys);
        }
    }

    /// <summary>Moves back whatever came behind something that waits for it; equal keys go by index, which is right.</summary>
    private static void KeepLinks(PackedColumns columns, Span<int> keys)
    {
        for (var i = keys.Length - 1; i >= 0; i--)
        {
            var item = columns.Items[i];
            for (var k = item.FirstWait; k < item.EndWait && columns.WaitsFor[k] < keys.Length; k++)
            {
                ref var before = ref keys[columns.WaitsFor[k]];
                before = Math.Min(before, keys[i]);
            }
        }
    }
}
