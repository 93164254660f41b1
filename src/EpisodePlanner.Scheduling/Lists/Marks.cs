namespace EpisodePlanner.Scheduling.Lists;

/// <summary>
/// Remembers which lists and schedules were met before, by a 64-bit mark each. Of two whose marks fall on one place the
/// newer one is remembered, so it may forget, which costs a schedule, but it never grows.
/// </summary>
internal sealed class Marks(int bits)
{
    private readonly ulong[] places = new ulong[1 << bits];

    /// <summary>The FNV-1a hash of integers, its high bits folded in at each step (Fowler, Noll and Vo).</summary>
    public static ulong Of(ReadOnlySpan<int> values)
    {
        unchecked
        {
            var mark = 14695981039346656037UL;
            foreach (var value in values)
            {
                mark = (mark ^ (uint)value) * 1099511628211UL;
                mark ^= mark >> 29;
            }

            return mark;
        }
    }

    /// <summary>Remembers a mark; false where it was remembered already.</summary>
    public bool Add(ulong mark)
    {
        ref var place = ref places[mark & (ulong)(places.Length - 1)];
        if (place == mark)
        {
            return false;
        }

        place = mark;
        return true;
    }
}
