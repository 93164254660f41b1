namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// The minutes in which one station is open and not taken, as ascending gaps. Each gap remembers at which place the
/// work before and after it is done, since a sitting that goes on there needs no new setting up.
/// </summary>
internal sealed class FreeTime
{
    /// <summary>The mark of a gap's end where the station closes, or where the neighbour works at no place.</summary>
    public const int NoPlace = 0;

    private int[] starts = [];
    private int[] ends = [];
    private int[] placesBefore = [];
    private int[] placesAfter = [];

    // Gaps stand at [first, Limit). Work mostly takes the earliest gaps, so the shorter side is moved to close or make room.
    private int first;

    /// <summary>One more than the index of the last gap.</summary>
    public int Limit { get; private set; }

    public int Start(int gap) => starts[gap];

    public int End(int gap) => ends[gap];

    /// <summary>One more than the index of the place where work ends at the gap's start; <see cref="NoPlace"/> for none.</summary>
    public int PlaceBefore(int gap) => placesBefore[gap];

    public int PlaceAfter(int gap) => placesAfter[gap];

    /// <summary>Nothing taken: open as the calendar says.</summary>
    public void Reset(IntervalCalendar hours)
    {
        Grow(hours.Count);
        hours.Starts.CopyTo(starts);
        hours.Ends.CopyTo(ends);
        first = 0;
        Limit = hours.Count;
        Array.Clear(placesBefore, 0, Limit);
        Array.Clear(placesAfter, 0, Limit);
    }

    /// <summary>Remembers that somebody is set up at a place at minute 0, if the first gap begins there.</summary>
    public void SitAtStart(int placeMark)
    {
        if (Limit > 0 && starts[0] == 0)
        {
            placesBefore[0] = placeMark;
        }
    }

    /// <summary>The first gap that ends after a minute; <see cref="Limit"/> where none does.</summary>
    public int FirstEndingAfter(int minute)
    {
        var found = ends.AsSpan(first, Limit - first).BinarySearch(minute);
        return first + (found >= 0 ? found + 1 : ~found);
    }

    /// <summary>Takes the minutes from a start to an end, whether free or not, for work at a place.</summary>
    /// <param name="start">The first minute.</param>
    /// <param name="end">The minute after the last.</param>
    /// <param name="place">One more than the place's index, or <see cref="NoPlace"/>.</param>
    public void Take(int start, int end, int place)
    {
        if (start >= end)
        {
            return;
        }

        var from = FirstEndingAfter(start);
        if (from < Limit && starts[from] < start)
        {
            if (ends[from] > end)
            {
                Split(from, start, end, place);
                return;
            }

            ends[from] = start;
            placesAfter[from] = place;
            from++;
        }

        var to = from;
        while (to < Limit && ends[to] <= end)
        {
            to++;
        }

        var next = Remove(from, to);
        if (next < Limit && starts[next] < end)
        {
            starts[next] = end;
            placesBefore[next] = place;
        }
    }

    private void Split(int gap, int start, int end, int place)
    {
        var left = MakeRoomAfter(gap);
        ends[left + 1] = ends[left];
        placesAfter[left + 1] = placesAfter[left];
        ends[left] = start;
        placesAfter[left] = place;
        starts[left + 1] = end;
        placesBefore[left + 1] = place;
    }

    /// <summary>Makes room for one gap behind another; the index at which that one stands afterwards.</summary>
    private int MakeRoomAfter(int gap)
    {
        if (first > 0 && gap - first < Limit - gap)
        {
            Move(first, first - 1, gap - first + 1);
            first--;
            return gap - 1;
        }

        Grow(Limit + 1);
        Move(gap + 1, gap + 2, Limit - gap - 1);
        Limit++;
        return gap;
    }

    /// <summary>Removes the gaps from one index to below another; the index of the gap that followed them.</summary>
    private int Remove(int from, int to)
    {
        if (from - first < Limit - to)
        {
            Move(first, first + (to - from), from - first);
            first += to - from;
            return to;
        }

        Move(to, from, Limit - to);
        Limit -= to - from;
        return from;
    }

    private void Move(int from, int to, int count)
    {
        if (count > 0 && from != to)
        {
            Array.Copy(starts, from, starts, to, count);
            Array.Copy(ends, from, ends, to, count);
            Array.Copy(placesBefore, from, placesBefore, to, count);
            Array.Copy(placesAfter, from, placesAfter, to, count);
        }
    }

    private void Grow(int capacity)
    {
        if (capacity <= starts.Length)
        {
            return;
        }

        var size = Math.Max(capacity, starts.Length * 2);
        Array.Resize(ref starts, size);
        Array.Resize(ref ends, size);
        Array.Resize(ref placesBefore, size);
        Array.Resize(ref placesAfter, size);
    }
}
