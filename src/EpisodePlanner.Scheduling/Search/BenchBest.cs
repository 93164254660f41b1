namespace EpisodePlanner.Scheduling;

/// <summary>The list of the best schedule so far, with its row.</summary>
internal sealed class BenchBest(int items, int parts)
{
    private readonly int[] keys = new int[items];
    private readonly long[] row = new long[parts];
    private bool hasAny;

    public ReadOnlySpan<int> Keys => keys;

    public ReadOnlySpan<long> Row => row;

    /// <summary>Whether the schedule made last is the best.</summary>
    public bool IsLast { get; set; }

    /// <summary>The rule that made it, in words.</summary>
    public string Rule { get; private set; } = "";

    /// <summary>Keeps a list where it is the best so far.</summary>
    public void Offer(ReadOnlySpan<long> newRow, ReadOnlySpan<int> byKey, string rule)
    {
        if (!hasAny || newRow.SequenceCompareTo(row) < 0)
        {
            newRow.CopyTo(row);
            byKey.CopyTo(keys);
            (Rule, hasAny, IsLast) = (rule, true, true);
        }
    }
}
