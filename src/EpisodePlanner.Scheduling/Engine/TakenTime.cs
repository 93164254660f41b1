namespace EpisodePlanner.Scheduling.Engine;

/// <summary>The minutes for which one machine or place is taken, open or not, as ascending disjoint blocks.</summary>
internal sealed class TakenTime
{
    private int[] starts = new int[16];
    private int[] ends = new int[16];
    private int count;

    public void Clear() => count = 0;

    /// <summary>The end of the first block that shares a minute with [start, end); −1 where none does.</summary>
    public int EndOfFirstWithin(int start, int end)
    {
        if (start >= end)
        {
            return -1;
        }

        var block = FirstEndingAfter(start);
        return block < count && starts[block] < end ? ends[block] : -1;
    }

    /// <summary>Where the next block after a minute begins; <see cref="int.MaxValue"/> where none does.</summary>
    public int NextStart(int minute)
    {
        var block = FirstEndingAfter(minute);
        return block < count ? starts[block] : int.MaxValue;
    }

    /// <summary>Adds a block that shares no minute with the others.</summary>
    public void Add(int start, int end)
    {
        if (start >= end)
        {
            return;
        }

        if (count == starts.Length)
        {
            Array.Resize(ref starts, count * 2);
            Array.Resize(ref ends, count * 2);
        }

        var at = FirstEndingAfter(start);
        Array.Copy(starts, at, starts, at + 1, count - at);
        Array.Copy(ends, at, ends, at + 1, count - at);
        starts[at] = start;
        ends[at] = end;
        count++;
    }

    private int FirstEndingAfter(int minute)
    {
        var found = ends.AsSpan(0, count).BinarySearch(minute);
        return found >= 0 ? found + 1 : ~found;
    }
}
