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

    /// <summary>The index of a date; negative or from <see cref="Count"/> on where it does not touch the plan.</summary>
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
        ZoneStretch? stretch = null;
        for (var day = 0; day < starts.Length; day++)
        {
            starts[day] = stretch is { } s && s.Holds(starts[day - 1] + MinutesADay)
                ? starts[day - 1] + MinutesADay
                : axis.MinuteOf(DateOf(day));
            if (stretch is not { } now || !now.Holds(starts[day]))
            {
                stretch = now = ZoneStretch.At(axis, starts[day]);
            }

            plain[day] = now.Holds(starts[day] + MinutesADay) && now.BeginsDayAtMidnight(starts[day]);
        }
    }

    /// <summary>A stretch of minutes with one offset.</summary>
    /// <param name="From">Its first minute.</param>
    /// <param name="Last">Its last minute, if the change after it lies on a whole minute.</param>
    /// <param name="ToMidnight">Minutes from a multiple of a day to local midnight.</param>
    private readonly record struct ZoneStretch(int From, int Last, int ToMidnight)
    {
        public static ZoneStretch At(TimeAxis axis, int minute)
        {
            var interval = axis.Zone.GetZoneInterval(axis.MomentOf(minute));
            var from = interval.HasStart ? axis.MinuteOf(interval.Start) : int.MinValue;
            var last = interval.HasEnd ? axis.MinuteOf(interval.End) - 1 : int.MaxValue;
            var sinceMidnight = axis.LocalOf(minute).TimeOfDay.TickOfDay / NodaConstants.TicksPerMinute;
            return new ZoneStretch(from, last, Modulo(minute - (int)sinceMidnight));
        }

        public bool Holds(int minute) => From <= minute && minute <= Last;

        public bool BeginsDayAtMidnight(int minute) => Modulo(minute) == ToMidnight;

        private static int Modulo(int minute) => ((minute % MinutesADay) + MinutesADay) % MinutesADay;
    }
}
