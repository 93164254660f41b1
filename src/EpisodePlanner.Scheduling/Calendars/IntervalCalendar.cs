namespace EpisodePlanner.Scheduling;

/// <summary>
/// When something is open: disjoint spans of minutes in ascending order, none touching the next. Immutable.
/// </summary>
/// <remarks>
/// Questions about a moment or an amount of work take O(log n) for n spans. Minutes run from 0 to
/// <see cref="MaximumMinute"/>; beyond its last span a calendar is closed, so answers that would lie there are null.
/// </remarks>
public sealed class IntervalCalendar
{
    /// <summary>The last minute any calendar can speak of: about forty years.</summary>
    public const int MaximumMinute = 40 * 366 * 1440;

    private readonly int[] starts;
    private readonly int[] ends;

    // workBefore[i] is the open minutes before span i; one more entry holds the total.
    private readonly int[] workBefore;

    internal IntervalCalendar(int[] starts, int[] ends)
    {
        this.starts = starts;
        this.ends = ends;
        workBefore = new int[starts.Length + 1];
        for (var i = 0; i < starts.Length; i++)
        {
            workBefore[i + 1] = workBefore[i] + ends[i] - starts[i];
        }
    }

    /// <summary>The calendar that is never open.</summary>
    public static IntervalCalendar Never { get; } = new([], []);

    /// <summary>How many spans there are.</summary>
    public int Count => starts.Length;

    /// <summary>The first minutes of the spans, ascending.</summary>
    public ReadOnlySpan<int> Starts => starts;

    /// <summary>The ends of the spans (excluded), ascending.</summary>
    public ReadOnlySpan<int> Ends => ends;

    /// <summary>All open minutes.</summary>
    public int TotalWork => workBefore[^1];

    /// <summary>The span at an index.</summary>
    public MinuteSpan this[int index] => new(starts[index], ends[index]);

    /// <summary>Open from 0 until an end.</summary>
    /// <param name="end">The end, 0 to <see cref="MaximumMinute"/>.</param>
    public static IntervalCalendar Always(int end) => FromSpans([new MinuteSpan(0, end)]);

    /// <summary>Open in every given span; spans may overlap, touch, be empty and come in any order.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A span ends before it starts or leaves 0 to <see cref="MaximumMinute"/>.
    /// </exception>
    public static IntervalCalendar FromSpans(IEnumerable<MinuteSpan> spans)
    {
        var ordered = InOrder(spans);
        var joined = new SpanBuffer(ordered.Length);
        foreach (var span in ordered)
        {
            joined.AddOrJoin(span.Start, span.End);
        }

        return joined.ToCalendar();
    }

    /// <summary>Whether a minute is open.</summary>
    public bool IsOpen(int minute)
    {
        var index = FirstEndingAfter(minute);
        return index < starts.Length && starts[index] <= minute;
    }

    /// <summary>The index of the first span that ends after a minute; <see cref="Count"/> where none does.</summary>
    public int FirstEndingAfter(int minute)
    {
        var found = ends.AsSpan().BinarySearch(minute);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The first open minute at or after a minute, or null.</summary>
    public int? NextOpen(int minute)
    {
        var index = FirstEndingAfter(minute);
        return index < starts.Length ? Math.Max(starts[index], minute) : null;
    }

    /// <summary>Open minutes before a minute.</summary>
    public int WorkBefore(int minute)
    {
        var index = FirstEndingAfter(minute);
        var within = index < starts.Length ? Math.Max(0, minute - starts[index]) : 0;
        return workBefore[index] + within;
    }

    /// <summary>Open minutes from a start to an end that is not before it.</summary>
    public int WorkBetween(int start, int end) => WorkBefore(end) - WorkBefore(start);

    /// <summary>
    /// The earliest moment by which an amount of work is done that may begin at a start; the start itself for no work.
    /// Null where the calendar has too few minutes left.
    /// </summary>
    public int? Finish(int start, int work)
    {
        if (work == 0)
        {
            return start;
        }

        var target = (long)WorkBefore(start) + work;
        if (target > TotalWork)
        {
            return null;
        }

        var index = SpanHolding((int)target);
        return starts[index] + ((int)target - workBefore[index]);
    }

    /// <summary>
    /// The latest start from which an amount of work is done by a finish; the finish itself for no work. The inverse of
    /// <see cref="Finish"/>. Null where too few open minutes lie before it.
    /// </summary>
    public int? LatestStart(int finish, int work)
    {
        if (work == 0)
        {
            return finish;
        }

        var target = WorkBefore(finish) - work;
        if (target < 0)
        {
            return null;
        }

        var index = SpanHolding(target + 1);
        return starts[index] + (target - workBefore[index]);
    }

    /// <summary>Open when both are open.</summary>
    public IntervalCalendar Intersect(IntervalCalendar other)
    {
        var result = new SpanBuffer(Math.Max(Count, other.Count));
        for (int i = 0, j = 0; i < Count && j < other.Count;)
        {
            result.AddIfAny(Math.Max(starts[i], other.starts[j]), Math.Min(ends[i], other.ends[j]));
            if (ends[i] < other.ends[j])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return result.ToCalendar();
    }

    /// <summary>Open when either is open.</summary>
    public IntervalCalendar Union(IntervalCalendar other)
    {
        var result = new SpanBuffer(Count + other.Count);
        for (int i = 0, j = 0; i < Count || j < other.Count;)
        {
            if (j == other.Count || (i < Count && starts[i] <= other.starts[j]))
            {
                result.AddOrJoin(starts[i], ends[i]);
                i++;
            }
            else
            {
                result.AddOrJoin(other.starts[j], other.ends[j]);
                j++;
            }
        }

        return result.ToCalendar();
    }

    /// <summary>Open when this is open and the other is closed.</summary>
    public IntervalCalendar Except(IntervalCalendar other)
    {
        var result = new SpanBuffer(Count + other.Count);
        var j = 0;
        for (var i = 0; i < Count; i++)
        {
            var from = starts[i];
            for (; j < other.Count && other.ends[j] <= from; j++)
            {
            }

            for (var k = j; k < other.Count && other.starts[k] < ends[i]; k++)
            {
                result.AddIfAny(from, other.starts[k]);
                from = Math.Max(from, other.ends[k]);
            }

            result.AddIfAny(from, ends[i]);
        }

        return result.ToCalendar();
    }

    /// <summary>Open as this is, from a minute until an end; closed outside.</summary>
    public IntervalCalendar Clip(int from, int until)
    {
        var result = new SpanBuffer(4);
        for (var i = FirstEndingAfter(from); i < Count && starts[i] < until; i++)
        {
            result.AddIfAny(Math.Max(starts[i], from), Math.Min(ends[i], until));
        }

        return result.ToCalendar();
    }

    /// <summary>The spans, ascending.</summary>
    public IEnumerable<MinuteSpan> Spans()
    {
        for (var i = 0; i < Count; i++)
        {
            yield return this[i];
        }
    }

    /// <summary>The index of the span in which the work-th open minute (from 1) lies.</summary>
    private int SpanHolding(int work)
    {
        var found = workBefore.AsSpan().BinarySearch(work);
        return (found >= 0 ? found : ~found) - 1;
    }

    /// <summary>The spans that are not empty, by start; most callers give them in order, which costs no sorting.</summary>
    private static MinuteSpan[] InOrder(IEnumerable<MinuteSpan> spans)
    {
        var kept = new List<MinuteSpan>();
        var sorted = true;
        foreach (var span in spans)
        {
            if (Checked(span).Length > 0)
            {
                sorted = sorted && (kept.Count == 0 || kept[^1].Start <= span.Start);
                kept.Add(span);
            }
        }

        if (!sorted)
        {
            kept.Sort((one, two) => one.Start.CompareTo(two.Start));
        }

        return [.. kept];
    }

    private static MinuteSpan Checked(MinuteSpan span)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(span.Start);
        ArgumentOutOfRangeException.ThrowIfLessThan(span.End, span.Start);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(span.End, MaximumMinute);
        return span;
    }
}
