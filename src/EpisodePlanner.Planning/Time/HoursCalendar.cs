using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// Open hours as calendars of a plan, clipped to the plan. Local times are read as
/// <see cref="TimeAxis.MinuteOf(LocalDateTime)"/> does, so a night with a clock change has an hour less or more.
/// </summary>
public static class HoursCalendar
{
    /// <summary>
    /// When a station is open: its weekly hours, less what its closed days and hours cut (a closed day from local
    /// midnight to local midnight, with what spills into it from the evening before), then its extra hours, then less
    /// its busy times. Always open where the hours are absent; never where they are present and empty.
    /// </summary>
    public static IntervalCalendar Of(OpenHours? hours, TimeAxis axis)
    {
        if (hours is null)
        {
            return IntervalCalendar.Always(axis.Horizon);
        }

        var open = Weekly(hours.Weekly, axis);
        if (hours.Dated.Count > 0)
        {
            open = open.Except(Dated(hours.Dated, DatedHoursKind.Closed, axis))
                .Union(Dated(hours.Dated, DatedHoursKind.Extra, axis));
        }

        return hours.Busy.Count > 0 ? open.Except(Busy(hours.Busy, axis)) : open;
    }

    /// <summary>The union of weekly hours: opening hours, or the quiet hours of a place.</summary>
    public static IntervalCalendar Weekly(IEnumerable<WeeklyHours> lines, TimeAxis axis)
    {
        var byDay = lines.SelectMany(line => line.Days, (line, day) => (day, line)).ToLookup(x => x.day, x => x.line);
        var week = Enumerable.Range(0, 8).Select(day => byDay[(IsoDayOfWeek)day].ToArray()).ToArray();
        var spans = new AxisSpans(axis);
        for (var day = 0; day < axis.Days.Count; day++)
        {
            foreach (var line in week[(int)axis.Days.DayOfWeek(day)])
            {
                spans.AddHours(day, line.From, line.To);
            }
        }

        return spans.ToCalendar();
    }

    /// <summary>The local days Monday to Friday, each from midnight to midnight; days that touch are joined.</summary>
    public static IntervalCalendar BusinessDays(TimeAxis axis)
    {
        var spans = new AxisSpans(axis);
        for (var day = 0; day < axis.Days.Count; day++)
        {
            if (axis.Days.DayOfWeek(day) is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday))
            {
                spans.AddDay(day);
            }
        }

        return spans.ToCalendar();
    }

    /// <summary>The minutes that begin at given times of every day: when a run is looked at.</summary>
    public static IntervalCalendar LookAt(IReadOnlyList<LocalTime> times, TimeAxis axis)
    {
        var spans = new AxisSpans(axis);
        for (var day = 0; day < axis.Days.Count; day++)
        {
            foreach (var time in times)
            {
                var minute = axis.Days.MinuteOf(day, time);
                spans.Add(minute, minute + 1);
            }
        }

        return spans.ToCalendar();
    }

    private static IntervalCalendar Busy(IEnumerable<BusyTime> times, TimeAxis axis)
    {
        var spans = new AxisSpans(axis);
        foreach (var time in times)
        {
            spans.Add(axis.MinuteOf(time.From), axis.MinuteOf(time.To));
        }

        return spans.ToCalendar();
    }

    private static IntervalCalendar Dated(IEnumerable<DatedHours> lines, DatedHoursKind kind, TimeAxis axis)
    {
        var spans = new AxisSpans(axis);
        foreach (var line in lines.Where(line => line.Kind == kind))
        {
            var last = Math.Min(axis.Days.IndexOf(line.Through ?? line.On), axis.Days.Count - 1);
            for (var day = Math.Max(axis.Days.IndexOf(line.On), 0); day <= last; day++)
            {
                spans.AddHours(day, line.From, line.To);
            }
        }

        return spans.ToCalendar();
    }
}
