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

    /// <summary>How many gaps there are.</summary>
    public int Count { get; private set; }

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
        Count = hours.Count;
        Array.Clear(placesBefore, 0, Count);
        Array.Clear(placesAfter, 0, Count);
    }

    /// <summary>Remembers that somebody is set up at a place at minute 0, if the first gap begins there.</summary>
    public void SitAtStart(int placeMark)
    {
        if (Count > 0 && starts[0] == 0)
        {
            placesBefore[0] = placeMark;
        }
    }

    /// <summary>The first gap that ends after a minute; <see cref="Count"/> where none does.</summary>
    public int FirstEndingAfter(int minute)
    {
        var found = ends.AsSpan(0, Count).BinarySearch(minute);
        return found >= 0 ? found + 1 : ~found;
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

        var first = FirstEndingAfter(start);
        if (first < Count && starts[first] < start)
        {
            if (ends[first] > end)
            {
                Split(first, start, end, place);
                return;
            }

            ends[first] = start;
            placesAfter[first] = place;
            first++;
        }

        var last = first;
        while (last < Count && ends[last] <= end)
        {
            last++;
        }

        Remove(first, last);
        if (first < Count && starts[first] < end)
        {
            starts[first] = end;
            placesBefore[first] = place;
        }
    }

    private void Split(int gap, int start, int end, int place)
    {
        Grow(Count + 1);
        var tail = Count - gap;
        foreach (var column in (ReadOnlySpan<int[]>)[starts, ends, placesBefore, placesAfter])
        {
            Array.Copy(column, gap, column, gap + 1, tail);
        }

        Count++;
        ends[gap] = start;
        placesAfter[gap] = place;
        starts[gap + 1] = end;
        placesBefore[gap + 1] = place;
    }

    private void Remove(int first, int last)
    {
        if (last == first)
        {
            return;
        }

        foreach (var column in (ReadOnlySpan<int[]>)[starts, ends, placesBefore, placesAfter])
        {
            Array.Copy(column, last, column, first, Count - last);
        }

        Count -= last - first;
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
