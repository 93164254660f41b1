using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// The local days that touch a plan, from the day before minute 0 (whose evening may spill over) to the day of the
/// horizon, with the minute at which each begins. Immutable.
/// </summary>
/// <remarks>
/// A day without a clock change turns times into minutes by addition; only the few others ask the zone.
/// </remarks>
public sealed class LocalDays
{
    private const int MinutesADay = 1_440;

    private readonly TimeAxis axis;

    // starts[i] is the first minute of day i; one more entry holds the end of the last day.
    private readonly int[] starts;
    private readonly bool[] plain;

    internal LocalDays(TimeAxis axis)
    {
        this.axis = axis;
        First = axis.DateOf(0).PlusDays(-1);
        starts = new int[Period.DaysBetween(First, axis.DateOf(axis.Horizon)) + 2];
        plain = new bool[starts.Length];
        Fill();
    }

    /// <summary>The first day.</summary>
    public LocalDate First { get; }

    /// <summary>How many days there are; at least two.</summary>
    public int Count => starts.Length - 1;

    /// <summary>The date of a day.</summary>
    /// <param name="day">The day's index, 0 to <see cref="Count"/> − 1.</param>
    public LocalDate DateOf(int day) => First.PlusDays(day);

    /// <summary>The day of the week of a day.</summary>
    /// <param name="day">The day's index.</param>
    public IsoDayOfWeek DayOfWeek(int day) => (IsoDayOfWeek)((((int)First.DayOfWeek - 1 + day) % 7) + 1);

    /// <summary>
    /// The index of a date; negative or from <see cref="Count"/> on where it does not touch the plan.
    /// </summary>
    public int IndexOf(LocalDate date) => Period.DaysBetween(First, date);

    /// <summary>The minute at which a day begins.</summary>
    /// <param name="day">The day's index, 0 to <see cref="Count"/>; the last is the end of the last day.</param>
    public int StartOf(int day) => starts[day];

    /// <summary>The minute of a time of a day, read as <see cref="TimeAxis.MinuteOf(LocalDateTime)"/> does.</summary>
    /// <param name="day">The day's index, 0 to <see cref="Count"/>.</param>
    /// <param name="time">The local time; seconds are dropped.</param>
    public int MinuteOf(int day, LocalTime time) =>
        plain[day] ? starts[day] + (time.Hour * 60) + time.Minute : axis.MinuteOf(DateOf(day) + time);

    private void Fill()
    {
        var stretch = StretchAt(axis.MinuteOf(First));
        for (var day = 0; day < starts.Length; day++)
        {
            starts[day] = day > 0 && plain[day - 1] ? starts[day - 1] + MinutesADay : axis.MinuteOf(DateOf(day));
            stretch = stretch.Holds(starts[day]) ? stretch : StretchAt(starts[day]);
            plain[day] = stretch.Holds(starts[day] + MinutesADay)
                && starts[day] + stretch.ToLocal == day * MinutesADay;
        }
    }

    private ZoneStretch StretchAt(int minute)
    {
        var interval = axis.Zone.GetZoneInterval(axis.MomentOf(minute));
        var from = interval.HasStart ? axis.MinuteOf(interval.Start) : int.MinValue;
        var last = interval.HasEnd ? axis.MinuteOf(interval.End) - 1 : int.MaxValue;
        var local = axis.LocalOf(minute);
        var sinceFirst = (IndexOf(local.Date) * MinutesADay) + (local.Hour * 60) + local.Minute;
        return new ZoneStretch(from, last, sinceFirst - minute);
    }

    /// <summary>A stretch of minutes with one offset.</summary>
    /// <param name="From">Its first minute.</param>
    /// <param name="Last">Its last minute.</param>
    /// <param name="ToLocal">Added to a minute it gives local minutes since the first day's midnight.</param>
    private readonly record struct ZoneStretch(int From, int Last, int ToLocal)
    {
        public bool Holds(int minute) => From <= minute && minute <= Last;
    }
}
