namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// Serial generation and double justification by hand: makes one schedule after the other and allocates nothing for
/// any of them. Not safe for use by several threads at once.
/// </summary>
public sealed class PackedGenerator
{
    private readonly PackedProblem problem;
    private readonly PackedColumns columns;
    private readonly TwoWayDecoder decoder;
    private readonly int[] places;
    private readonly int[] list;
    private readonly int[] anyFinish;
    private readonly int[] placedIn;
    private int round;

    /// <summary>A generator with no schedule yet.</summary>
    public PackedGenerator(PackedProblem problem)
    {
        this.problem = problem;
        columns = PackedColumns.Forward(problem);
        decoder = new TwoWayDecoder(columns, PackedColumns.Mirrored(problem));
        (places, list) = (new int[problem.Count], new int[problem.Count]);
        (anyFinish, placedIn) = (new int[problem.Count], new int[problem.Count]);
        anyFinish.AsSpan().Fill(int.MaxValue);
        for (var place = 0; place < places.Length; place++)
        {
            places[problem.Network.Order[place]] = place;
        }
    }

    /// <summary>Gives each activity, in the order of a list, the earliest start that links and stations leave.</summary>
    /// <param name="order">Every activity once, each after those it waits for.</param>
    /// <returns>The end of the schedule.</returns>
    /// <exception cref="ArgumentException">The list is of another kind.</exception>
    public int Generate(ReadOnlySpan<int> order)
    {
        if (order.Length != list.Length)
        {
            throw new ArgumentException($"A list of {order.Length} for {list.Length} activities.", nameof(order));
        }

        // After 2^32 schedules rounds begin again; by then every mark has been overwritten by a later round.
        round = unchecked(round + 1);
        for (var i = 0; i < order.Length; i++)
        {
            list[i] = Placed(order[i]);
        }

        decoder.TryForwardList(list, anyFinish);
        return decoder.End;
    }

    /// <summary>
    /// Pushes the last schedule to the right, activity by activity from its last finish, and then to the left again: two
    /// schedules. See V. Valls, F. Ballestín and S. Quintanilla, "Justification and RCPSP", EJOR 165 (2005).
    /// </summary>
    /// <returns>The end, never later than before.</returns>
    public int Justify()
    {
        decoder.PrepareBackward(decoder.Finishes);
        decoder.Backward();
        decoder.TryForwardAgain(anyFinish);
        return decoder.End;
    }

    /// <summary>The last schedule; everything starts at 0 where there was none.</summary>
    public PackedSchedule ToSchedule()
    {
        var starts = new int[list.Length];
        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] = decoder.Starts[places[i]];
        }

        return PackedSchedule.FromStarts(problem, starts);
    }

    private int Placed(int activity)
    {
        if ((uint)activity >= (uint)places.Length || placedIn[places[activity]] == round)
        {
            throw new ArgumentException($"The list names {activity} twice, or there is no such activity.");
        }

        var place = places[activity];
        var item = columns.Items[place];
        for (var k = item.FirstWait; k < item.EndWait && columns.WaitsFor[k] < places.Length; k++)
        {
            if (placedIn[columns.WaitsFor[k]] != round)
            {
                throw new ArgumentException($"The list names {activity} before something that it waits for.");
            }
        }

        placedIn[place] = round;
        return place;
    }
}
