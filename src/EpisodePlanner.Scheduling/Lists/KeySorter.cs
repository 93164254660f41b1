namespace EpisodePlanner.Scheduling.Lists;

/// <summary>Sorts activities by integer keys without allocating; equal keys stay in the order of the indices.</summary>
internal sealed class KeySorter
{
    /// <summary>Keys that span at most this many values per activity are counted, others compared.</summary>
    private const int CountedSpread = 16;

    private readonly int[] counts;
    private readonly ulong[] pairs;

    public KeySorter(int count)
    {
        counts = new int[(CountedSpread * count) + 2];
        pairs = new ulong[count];
    }

    /// <summary>Writes the indices of keys in ascending order of key.</summary>
    /// <param name="keys">The keys; their differences fit 31 bits.</param>
    /// <param name="order">As many places as there are keys.</param>
    public void Sort(ReadOnlySpan<int> keys, Span<int> order)
    {
        var (least, greatest) = (int.MaxValue, int.MinValue);
        foreach (var key in keys)
        {
            least = Math.Min(least, key);
            greatest = Math.Max(greatest, key);
        }

        if (keys.Length > 0 && greatest - least < CountedSpread * keys.Length)
        {
            Count(keys, order, least, greatest - least);
        }
        else
        {
            Compare(keys, order, least);
        }
    }

    private void Count(ReadOnlySpan<int> keys, Span<int> order, int least, int spread)
    {
        unchecked
        {
            // First how many keys are less than each value, then the place of the next activity with that value.
            var places = counts.AsSpan(0, spread + 2);
            places.Clear();
            foreach (var key in keys)
            {
                places[key - least + 1]++;
            }

            for (var value = 1; value <= spread; value++)
            {
                places[value] += places[value - 1];
            }

            for (var i = 0; i < keys.Length; i++)
            {
                order[places[keys[i] - least]++] = i;
            }
        }
    }

    private void Compare(ReadOnlySpan<int> keys, Span<int> order, int least)
    {
        for (var i = 0; i < keys.Length; i++)
        {
            pairs[i] = ((ulong)(keys[i] - least) << 32) | (uint)i;
        }

        pairs.AsSpan(0, keys.Length).Sort();
        for (var i = 0; i < keys.Length; i++)
        {
            order[i] = (int)(pairs[i] & uint.MaxValue);
        }
    }
}
