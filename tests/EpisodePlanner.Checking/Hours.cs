using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// Open stretches with the checker's own arithmetic. Of a calendar it reads the spans and nothing else, so that a fault
/// in the calendars of the scheduler cannot hide itself here. Minutes run from −<see cref="Far"/> to <see cref="Far"/>.
/// </summary>
public sealed class Hours
{
    /// <summary>Further than any plan looks.</summary>
    public const int Far = 500_000_000;

    private readonly int[] starts;
    private readonly int[] ends;
    private readonly long[] before;

    private Hours(int[] starts, int[] ends)
    {
        this.starts = starts;
        this.ends = ends;
        before = new long[starts.Length + 1];
        for (var i = 0; i < starts.Length; i++)
            before[i + 1] = before[i] + ends[i] - starts[i];
    }

    /// <summary>Open at all times.</summary>
    public static Hours Always { get; } = new([-Far], [Far]);

    /// <summary>Never open.</summary>
    public static Hours Never { get; } = new([], []);

    /// <summary>The open stretches, ascending.</summary>
    public IEnumerable<Stretch> Stretches => starts.Zip(ends, (start, end) => new Stretch(start, end));

    /// <summary>The hours of a calendar.</summary>
    public static Hours Of(IntervalCalendar calendar) => new(calendar.Starts.ToArray(), calendar.Ends.ToArray());

    /// <summary>Open in every given stretch; empty ones are dropped, those that overlap or touch are joined.</summary>
    public static Hours From(IEnumerable<Stretch> stretches)
    {
        var starts = new List<int>();
        var ends = new List<int>();
        foreach (var (start, end) in stretches.Where(s => s.Start < s.End).OrderBy(s => s.Start))
        {
            if (ends.Count > 0 && start <= ends[^1])
            {
                ends[^1] = Math.Max(ends[^1], end);
                continue;
            }

            starts.Add(start);
            ends.Add(end);
        }

        return new Hours([.. starts], [.. ends]);
    }

    /// <summary>The open stretch around a minute, or null.</summary>
    public Stretch? Around(int minute)
    {
        var index = FirstEndingAfter(minute);
        return index < starts.Length && starts[index] <= minute ? new Stretch(starts[index], ends[index]) : null;
    }

    /// <summary>Whether a minute is open.</summary>
    public bool HasMinute(int minute) => Around(minute) is not null;

    /// <summary>Whether all minutes from a start to an end are open; true where there are none.</summary>
    public bool HasAll(int start, int end) => start >= end || (Around(start) is { } around && end <= around.End);

    /// <summary>The first open minute at or after a minute, or null.</summary>
    public int? Next(int minute)
    {
        var index = FirstEndingAfter(minute);
        return index < starts.Length ? Math.Max(starts[index], minute) : null;
    }

    /// <summary>The earliest moment by which so many open minutes have passed since a start; null where there is none.</summary>
    public int? After(int start, int minutes)
    {
        var index = FirstEndingAfter(start);
        if (minutes == 0 || index == starts.Length)
            return minutes == 0 ? start : null;

        var goal = before[index] + Math.Max(0, start - starts[index]) + minutes;
        var found = Array.BinarySearch(before, goal);
        var last = (found >= 0 ? found : ~found) - 1;
        return last < starts.Length ? starts[last] + (int)(goal - before[last]) : null;
    }

    /// <summary>Open when both are.</summary>
    public Hours And(Hours other)
    {
        var both = new List<Stretch>();
        for (int i = 0, j = 0; i < starts.Length && j < other.starts.Length; _ = ends[i] < other.ends[j] ? i++ : j++)
            both.Add(new Stretch(Math.Max(starts[i], other.starts[j]), Math.Min(ends[i], other.ends[j])));

        return From(both);
    }

    /// <summary>Open when this is and the other is not.</summary>
    public Hours Without(Hours other) => And(other.Opposite());

    /// <summary>The moments s for which all of [s + offset, s + offset + length) is open; of no length, its one minute.</summary>
    public Hours StartsFor(int offset, int length) =>
        From(Stretches.Select(s => new Stretch(s.Start - offset, s.End - offset - Math.Max(0, length - 1))));

    private Hours Opposite() =>
        From(ends.Prepend(-Far).Zip(starts.Append(Far), (end, start) => new Stretch(end, start)));

    private int FirstEndingAfter(int minute)
    {
        var found = Array.BinarySearch(ends, minute);
        return found >= 0 ? found + 1 : ~found;
    }
}
