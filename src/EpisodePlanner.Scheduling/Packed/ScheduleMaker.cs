namespace EpisodePlanner.Scheduling.Packed;

/// <summary>Makes schedules of one problem in both directions, counts each, and offers every forward one as the best.</summary>
/// <remarks>Allocates nothing once it is made.</remarks>
internal sealed class ScheduleMaker
{
    /// <summary>Nothing made yet.</summary>
    public ScheduleMaker(PackedProblem problem, Incumbent incumbent, IScheduleObjective objective)
    {
        Columns = PackedColumns.Forward(problem);
        Decoder = new TwoWayDecoder(Columns, PackedColumns.Mirrored(problem));
        Incumbent = incumbent;
        Deadlines = new Deadlines(Columns, [.. problem.Network.Order], objective);
    }

    /// <summary>The problem in columns.</summary>
    public PackedColumns Columns { get; }

    /// <summary>The last schedule in each direction.</summary>
    public TwoWayDecoder Decoder { get; }

    /// <summary>The best so far.</summary>
    public Incumbent Incumbent { get; }

    /// <summary>What is of interest.</summary>
    public Deadlines Deadlines { get; }

    /// <summary>One schedule, forward in ascending order of keys; false where it is of no interest.</summary>
    public bool TryForward(ReadOnlySpan<int> keys)
    {
        Incumbent.Count();
        return Offer(Decoder.TryForward(keys, Deadlines.Latest));
    }

    /// <summary>One schedule, backward from the list prepared last.</summary>
    public void Backward()
    {
        Incumbent.Count();
        Decoder.Backward();
    }

    /// <summary>One schedule, forward in the order of the last backward schedule; false where it is of no interest.</summary>
    public bool TryForwardAgain()
    {
        Incumbent.Count();
        return Offer(Decoder.TryForwardAgain(Deadlines.Latest));
    }

    private bool Offer(bool isComplete)
    {
        if (isComplete)
        {
            Incumbent.Offer(Decoder.Starts, Decoder.Finishes);
        }

        return isComplete;
    }
}
