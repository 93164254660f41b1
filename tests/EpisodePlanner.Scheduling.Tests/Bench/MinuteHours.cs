namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Hours told minute by minute, and the stretches of work that fit into them.</summary>
internal sealed class MinuteHours
{
    private readonly bool[] open;

    private MinuteHours(bool[] open) => this.open = open;

    public static MinuteHours Of(IntervalCalendar calendar, int length)
    {
        var open = new bool[length];
        foreach (var span in calendar.Spans())
        {
            Array.Fill(open, true, span.Start, Math.Min(length, span.End) - span.Start);
        }

        return new MinuteHours(open);
    }

    public static MinuteHours Always(int length) => new([.. Enumerable.Repeat(true, length)]);

    public bool Has(int minute) => minute >= 0 && minute < open.Length && open[minute];

    /// <summary>Every minute of a stretch; of no length, its one minute.</summary>
    public bool HasAll(int start, int length) =>
        length == 0 ? Has(start) : Enumerable.Range(start, length).All(Has);

    public MinuteHours And(MinuteHours other) => new([.. open.Zip(other.open, (a, b) => a && b)]);

    /// <summary>Without so many minutes at the beginning and the end of every opening; none at minute 0 for work set up then.</summary>
    public MinuteHours Trimmed(bool isSetUp, int beginning, int end) => new(
        [.. open.Select((_, m) => HasAll(m, end + 1) && IsSetUp(m, isSetUp, beginning))]);

    /// <summary>When so many open minutes have passed since a moment; null where too few follow.</summary>
    public int? After(int moment, int minutes)
    {
        for (; minutes > 0 && moment < open.Length; moment++)
        {
            minutes -= Has(moment) ? 1 : 0;
        }

        return minutes == 0 ? moment : null;
    }

    /// <summary>
    /// When work that begins at just this minute is finished: it goes on in every opening that still has
    /// min(block, work left) minutes. Null where it can't begin here or never ends.
    /// </summary>
    public int? Finish(int start, int minutes, int block)
    {
        var (left, isFirst) = (minutes, true);
        for (var minute = start; minute < open.Length; minute++)
        {
            var stretch = Math.Min(left, OpenFrom(minute, left));
            if (stretch >= Math.Max(1, Math.Min(block, left)))
            {
                (left, isFirst, minute) = (left - stretch, false, minute + stretch);
            }
            else
            {
                minute += Math.Max(0, OpenFrom(minute, int.MaxValue) - 1);
            }

            if (left == 0 || isFirst)
            {
                return left == 0 ? minute : null;
            }
        }

        return null;
    }

    private bool IsSetUp(int minute, bool isSetUp, int beginning) =>
        (isSetUp && HasAll(0, minute + 1)) || HasAll(minute - beginning, beginning);

    private int OpenFrom(int minute, int most)
    {
        var length = 0;
        while (length < most && Has(minute + length))
        {
            length++;
        }

        return length;
    }
}
