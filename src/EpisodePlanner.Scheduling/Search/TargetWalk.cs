using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling;

/// <summary>Moves the better of two orders of targets a little, again and again, as long as it gets no worse.</summary>
internal sealed class TargetWalk
{
    /// <summary>The rule in words.</summary>
    public const string Rule = "what is due first";

    private readonly Targets targets;
    private readonly TargetMoves moves;
    private readonly int[][] first;
    private readonly long[] row;
    private int[] order;
    private int[] moved;
    private bool hasBegun;

    public TargetWalk(Targets targets, int parts, ulong seed)
    {
        this.targets = targets;
        moves = new TargetMoves(targets, seed);
        var byDueDate = targets.ByModifiedDueDate();
        first = [byDueDate, targets.FirmFirst(byDueDate)];
        (order, moved, row) = ([.. byDueDate], new int[targets.Count], new long[parts]);
    }

    /// <summary>How many targets there are.</summary>
    public int Count => targets.Count;

    /// <summary>The row of the order it stands at.</summary>
    public ReadOnlySpan<long> Row => row;

    /// <summary>Writes the keys of the order by modified due dates, or of the one in which firm dates go first.</summary>
    public void WriteFirst(bool firmFirst, Span<int> keys) => targets.Write(first[firmFirst ? 1 : 0], keys);

    /// <summary>Begins at one of the two, where it was tried and no other is better.</summary>
    public void Begin(bool firmFirst, bool wasTried, ReadOnlySpan<long> itsRow)
    {
        if (wasTried && (!hasBegun || itsRow.SequenceCompareTo(row) < 0))
        {
            first[firmFirst ? 1 : 0].CopyTo(order, 0);
            itsRow.CopyTo(row);
            hasBegun = true;
        }
    }

    /// <summary>Writes the keys of an order like the one it stands at; false where there is none.</summary>
    public bool TryNext(Span<int> keys)
    {
        if (!hasBegun || !moves.TryNext(order, moved))
        {
            return false;
        }

        targets.Write(moved, keys);
        return true;
    }

    /// <summary>Goes to the order tried last, unless it is worse; true in any case.</summary>
    public bool Judge(ReadOnlySpan<long> itsRow)
    {
        if (itsRow.SequenceCompareTo(row) <= 0)
        {
            (order, moved) = (moved, order);
            itsRow.CopyTo(row);
        }

        return true;
    }
}
