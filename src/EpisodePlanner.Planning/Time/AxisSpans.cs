using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Collects spans of an axis, each clipped to the plan; what does not touch it is dropped.</summary>
internal sealed class AxisSpans(TimeAxis axis)
{
    private readonly List<MinuteSpan> spans = [];

    /// <summary>Adds a span; nothing where it ends at or before its start, as a clock change can make it.</summary>
    public void Add(int from, int to)
    {
        var start = Math.Max(from, 0);
        var end = Math.Min(to, axis.Horizon);
        if (start < end)
        {
            spans.Add(new MinuteSpan(start, end));
        }
    }

    /// <summary>Adds a whole local day.</summary>
    public void AddDay(int day) => Add(axis.Days.StartOf(day), axis.Days.StartOf(day + 1));

    /// <summary>
    /// Adds hours that begin on a day. An absent time is the day's own beginning or end; an end at or before the
    /// beginning is on the next day.
    /// </summary>
    public void AddHours(int day, LocalTime? from, LocalTime? to)
    {
        var days = axis.Days;
        var start = from is { } begin ? days.MinuteOf(day, begin) : days.StartOf(day);
        if (to is not { } finish)
        {
            Add(start, days.StartOf(day + 1));
            return;
        }

        var overnight = from is { } early && finish <= early;
        Add(start, days.MinuteOf(overnight ? day + 1 : day, finish));
    }

    /// <summary>The calendar that is open in the spans.</summary>
    public IntervalCalendar ToCalendar() => IntervalCalendar.FromSpans(spans);
}
