namespace EpisodePlanner.Scheduling.Lists;

/// <summary>Some schedules with their rows, in arrays that are used again for whatever takes a schedule's place.</summary>
internal sealed class Population
{
    private readonly int[][] finishes;
    private readonly int[] ends;
    private readonly long[] rows;
    private readonly int parts;

    public Population(int capacity, int activities, int parts)
    {
        finishes = [.. Enumerable.Range(0, capacity).Select(_ => new int[activities])];
        ends = new int[capacity];
        rows = new long[capacity * parts];
        this.parts = parts;
    }

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>How many there can be.</summary>
    public int Capacity => ends.Length;

    /// <summary>Whether there is no place for another one.</summary>
    public bool IsFull => Count == ends.Length;

    /// <summary>The place of a schedule with the greatest row; 0 where there is none.</summary>
    public int Worst { get; private set; }

    /// <summary>When the activities of a member finish.</summary>
    public ReadOnlySpan<int> Finishes(int member) => finishes[member];

    /// <summary>The end of a member.</summary>
    public int End(int member) => ends[member];

    /// <summary>The row of a member.</summary>
    public ReadOnlySpan<long> Row(int member) => rows.AsSpan(member * parts, parts);

    /// <summary>Below 0 where the left member is the better one.</summary>
    public int Compare(int left, int right) => Row(left).SequenceCompareTo(Row(right));

    /// <summary>Takes a schedule in as a further member.</summary>
    public void Add(ReadOnlySpan<int> newFinishes, int end, ReadOnlySpan<long> row) => Set(Count++, newFinishes, end, row);

    /// <summary>Puts a schedule in the place of a member.</summary>
    public void Set(int member, ReadOnlySpan<int> newFinishes, int end, ReadOnlySpan<long> row)
    {
        newFinishes.CopyTo(finishes[member]);
        ends[member] = end;
        row.CopyTo(rows.AsSpan(member * parts, parts));
        Worst = member == Worst ? FindWorst() : Compare(member, Worst) > 0 ? member : Worst;
    }

    private int FindWorst()
    {
        var worst = 0;
        for (var member = 1; member < Count; member++)
        {
            worst = Compare(member, worst) > 0 ? member : worst;
        }

        return worst;
    }
}
