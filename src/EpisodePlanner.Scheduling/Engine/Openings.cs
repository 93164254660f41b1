namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Finds, in ascending order, the stretches in which all stations of a mode are free together. At a place the
/// stretch leaves room for setting up and tidying, except where the same people's work there goes on. Loading and
/// unloading are no sitting: they need no setting up of their own, but end the one before; limits do not bind them.
/// </summary>
internal sealed class Openings(BenchState state)
{
    private const int Never = IntervalCalendar.MaximumMinute + 1;

    private CompiledMode mode = null!;
    private IntervalCalendar[] limits = [];
    private int[] personGaps = new int[4];
    private int[] otherGaps = new int[4];
    private int[] limitSpans = new int[4];
    private int placeGap;
    private bool sits;

    /// <summary>Begins to look for a sitting of at least some minutes at or after a minute.</summary>
    /// <returns>The first minute at which one might begin.</returns>
    public int BeginWork(CompiledMode wanted, int minute, int need)
    {
        var first = state.FullStretches.Skip(wanted, need, minute);
        Begin(wanted, first, sitting: true);
        return first;
    }

    /// <summary>Remembers that from a minute to the start of the opening that was found, none other begins.</summary>
    public void Learn(int from, int need, int start)
    {
        if (from < start)
        {
            state.FullStretches.Learn(mode, need, from, start);
        }
    }

    /// <summary>Begins to look for openings of a mode at or after a minute.</summary>
    /// <param name="wanted">The mode.</param>
    /// <param name="minute">The minute.</param>
    /// <param name="sitting">Whether the work is a sitting at the mode's place.</param>
    public void Begin(CompiledMode wanted, int minute, bool sitting)
    {
        mode = wanted;
        sits = sitting;
        limits = sitting ? mode.Limits : [];
        Resize(ref personGaps, mode.Persons.Length);
        Resize(ref otherGaps, mode.Others.Length);
        Resize(ref limitSpans, limits.Length);
        for (var i = 0; i < mode.Persons.Length; i++)
        {
            personGaps[i] = state.Free(mode.Persons[i]).FirstEndingAfter(minute);
        }

        for (var i = 0; i < mode.Others.Length; i++)
        {
            otherGaps[i] = state.Free(mode.Others[i]).FirstEndingAfter(minute);
        }

        for (var i = 0; i < limits.Length; i++)
        {
            limitSpans[i] = limits[i].FirstEndingAfter(minute);
        }

        placeGap = mode.Place < 0 ? 0 : state.Free(mode.Place).FirstEndingAfter(minute);
    }

    /// <summary>The first opening of at least some minutes at or after a minute that is not before the last asked for.</summary>
    /// <returns>Whether there is one before the horizon.</returns>
    public bool TryNext(int minute, int need, out int start, out int end)
    {
        start = minute;
        while (start <= state.Horizon && AdvanceTo(start))
        {

            var from = Math.Max(start, LatestStart());
            end = EarliestEnd();
            if (from + need <= end && from < end)
            {
                start = from;
                return true;
            }

            // Where setting up pushes a start, a gap before it may need none: look at every gap.
            start = state.Compiled.HasSittings ? NextChange() : Math.Max(from, NextChange());
        }

        end = start;
        return false;
    }

    /// <summary>Moves every cursor to the first gap that ends after a minute; false where one has none left.</summary>
    private bool AdvanceTo(int minute)
    {
        for (var i = 0; i < mode.Persons.Length; i++)
        {
            if (!Advance(state.Free(mode.Persons[i]), ref personGaps[i], minute))
            {
                return false;
            }
        }

        for (var i = 0; i < mode.Others.Length; i++)
        {
            if (!Advance(state.Free(mode.Others[i]), ref otherGaps[i], minute))
            {
                return false;
            }
        }

        for (var i = 0; i < limits.Length; i++)
        {
            var limit = limits[i];
            while (limitSpans[i] < limit.Count && limit.Ends[limitSpans[i]] <= minute)
            {
                limitSpans[i]++;
            }

            if (limitSpans[i] == limit.Count)
            {
                return false;
            }
        }

        return mode.Place < 0 || Advance(state.Free(mode.Place), ref placeGap, minute);
    }

    private static bool Advance(FreeTime free, ref int gap, int minute)
    {
        while (gap < free.Limit && free.End(gap) <= minute)
        {
            gap++;
        }

        return gap < free.Limit;
    }

    /// <summary>When the last of the current gaps begins, setting up included.</summary>
    private int LatestStart()
    {
        var start = SittingStart();
        for (var i = 0; i < mode.Others.Length; i++)
        {
            start = Math.Max(start, state.Free(mode.Others[i]).Start(otherGaps[i]));
        }

        for (var i = 0; i < limits.Length; i++)
        {
            start = Math.Max(start, limits[i].Starts[limitSpans[i]]);
        }

        return start;
    }

    /// <summary>When the first of the current gaps ends, tidying included.</summary>
    private int EarliestEnd()
    {
        var end = SittingEnd();
        for (var i = 0; i < mode.Others.Length; i++)
        {
            end = Math.Min(end, state.Free(mode.Others[i]).End(otherGaps[i]));
        }

        for (var i = 0; i < limits.Length; i++)
        {
            end = Math.Min(end, limits[i].Ends[limitSpans[i]]);
        }

        return end;
    }

    private int SittingStart()
    {
        var place = mode.Place < 0 ? 0 : state.Free(mode.Place).Start(placeGap);
        var latest = 0;
        var goesOn = sits && mode.Place >= 0 && mode.Persons.Length > 0;
        for (var i = 0; i < mode.Persons.Length; i++)
        {
            var free = state.Free(mode.Persons[i]);
            var (start, mark) = (free.Start(personGaps[i]), free.PlaceBefore(personGaps[i]));
            var same = sits && mark == mode.PlaceMark && start >= place;
            goesOn &= same;
            latest = Math.Max(latest, start + (same ? 0 : state.Compiled.TidyByMark[mark]));
        }

        return Math.Max(latest, place) + (goesOn || !sits ? 0 : mode.SetUp);
    }

    private int SittingEnd()
    {
        var place = mode.Place < 0 ? Never : state.Free(mode.Place).End(placeGap);
        var earliest = Never;
        var goesOn = sits && mode.Place >= 0 && mode.Persons.Length > 0;
        for (var i = 0; i < mode.Persons.Length; i++)
        {
            var free = state.Free(mode.Persons[i]);
            var (end, mark) = (free.End(personGaps[i]), free.PlaceAfter(personGaps[i]));
            var same = sits && mark == mode.PlaceMark && end <= place;
            goesOn &= same;
            earliest = Math.Min(earliest, end - (same ? 0 : state.Compiled.SetUpByMark[mark]));
        }

        return Math.Min(earliest, place) - (goesOn || !sits ? 0 : mode.Tidy);
    }

    /// <summary>The first end of a current gap, after which the search goes on.</summary>
    private int NextChange()
    {
        var next = mode.Place < 0 ? Never : state.Free(mode.Place).End(placeGap);
        for (var i = 0; i < mode.Persons.Length; i++)
        {
            next = Math.Min(next, state.Free(mode.Persons[i]).End(personGaps[i]));
        }

        for (var i = 0; i < mode.Others.Length; i++)
        {
            next = Math.Min(next, state.Free(mode.Others[i]).End(otherGaps[i]));
        }

        for (var i = 0; i < limits.Length; i++)
        {
            next = Math.Min(next, limits[i].Ends[limitSpans[i]]);
        }

        return next;
    }

    private static void Resize(ref int[] array, int size)
    {
        if (array.Length < size)
        {
            array = new int[size];
        }
    }
}
