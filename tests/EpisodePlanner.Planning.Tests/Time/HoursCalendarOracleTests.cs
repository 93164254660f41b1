using NodaTime;

namespace EpisodePlanner.Planning.Tests;

/// <summary>
/// Hours against the definition, asked minute by minute, on seeded random hours in weeks with a clock change. The
/// oracle resolves local times with the library's lenient resolver, which reads gaps and repeats as RFC 5545 does.
/// </summary>
public sealed class HoursCalendarOracleTests
{
    private const int HorizonDays = 6;

    public static TheoryData<string, string, int> Cases
    {
        get
        {
            var cases = new TheoryData<string, string, int>();
            for (var seed = 1; seed <= 8; seed++)
            {
                cases.Add("Europe/Dublin", "2027-03-26T13:20:00Z", seed);
                cases.Add("Europe/Dublin", "2027-10-28T23:10:00Z", seed);
                cases.Add("America/New_York", "2027-03-12T03:00:00Z", seed);
                cases.Add("America/New_York", "2027-11-05T17:45:00Z", seed);
                cases.Add("Australia/Lord_Howe", "2027-04-01T20:00:00Z", seed);
                cases.Add("Australia/Lord_Howe", "2027-10-01T01:00:00Z", seed);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_RandomHours_AgreesMinuteByMinute(string zone, string plannedAt, int seed)
    {
        var axis = Text.Axis(plannedAt, zone, HorizonDays);
        var hours = RandomHours(new Dice(seed), axis.DateOf(0));
        var calendar = HoursCalendar.Of(hours, axis);
        var (weekly, closed, extra) = (new List<Interval>(), new List<Interval>(), new List<Interval>());
        for (var date = axis.DateOf(0).PlusDays(-3); date <= axis.DateOf(axis.Horizon); date = date.PlusDays(1))
        {
            weekly.AddRange(WeeklyOn(hours, date, axis.Zone));
            closed.AddRange(DatedOn(hours, DatedHoursKind.Closed, date, axis.Zone));
            extra.AddRange(DatedOn(hours, DatedHoursKind.Extra, date, axis.Zone));
        }

        var busy = hours.Busy.Select(time => Lenient(time.From, time.To, axis.Zone)).ToList();
        for (var minute = 0; minute < axis.Horizon; minute++)
        {
            var moment = axis.PlannedAt + Duration.FromMinutes(minute);
            var open = ((Any(weekly, moment) && !Any(closed, moment)) || Any(extra, moment)) && !Any(busy, moment);
            Assert.True(open == calendar.IsOpen(minute), $"{moment.InZone(axis.Zone)} should be open: {open}.");
        }

        Assert.False(calendar.IsOpen(axis.Horizon));
    }

    private static OpenHours RandomHours(Dice dice, LocalDate today) => new()
    {
        Weekly = Many(dice, 5, () => new WeeklyHours
        {
            Days = Many(dice, 4, () => (IsoDayOfWeek)dice.Between(1, 7)),
            From = RandomTime(dice),
            To = RandomTime(dice),
        }),
        Dated = Many(dice, 4, () => RandomDated(dice, today)),
        Busy = Many(dice, 3, () =>
        {
            var from = today.PlusDays(dice.Between(-1, HorizonDays)) + RandomTime(dice);
            return new BusyTime { From = from, To = from.PlusMinutes(dice.Between(1, 2_000)) };
        }),
    };

    private static DatedHours RandomDated(Dice dice, LocalDate today)
    {
        var on = today.PlusDays(dice.Between(-2, HorizonDays));
        var whole = dice.Between(0, 2) == 0;
        return new DatedHours
        {
            Kind = whole || dice.Between(0, 1) == 0 ? DatedHoursKind.Closed : DatedHoursKind.Extra,
            On = on,
            Through = dice.Between(0, 1) == 0 ? null : on.PlusDays(dice.Between(0, 2)),
            From = whole ? null : RandomTime(dice),
            To = whole ? null : RandomTime(dice),
        };
    }

    // Half of the times lie around the clock changes.
    private static LocalTime RandomTime(Dice dice) =>
        LocalTime.FromMinutesSinceMidnight(5 * (dice.Between(0, 1) == 0 ? dice.Between(0, 287) : dice.Between(6, 42)));

    private static ValueList<T> Many<T>(Dice dice, int most, Func<T> one) =>
        Enumerable.Range(0, dice.Between(1, most)).Select(_ => one()).ToValueList();

    private static IEnumerable<Interval> WeeklyOn(OpenHours hours, LocalDate date, DateTimeZone zone) =>
        from line in hours.Weekly
        where line.Days.Contains(date.DayOfWeek)
        select Lenient(date + line.From, date.PlusDays(line.To <= line.From ? 1 : 0) + line.To, zone);

    private static IEnumerable<Interval> DatedOn(
        OpenHours hours, DatedHoursKind kind, LocalDate date, DateTimeZone zone) =>
        from line in hours.Dated
        where line.Kind == kind && line.On <= date && date <= (line.Through ?? line.On)
        select HoursOn(line, date, zone);

    private static Interval HoursOn(DatedHours line, LocalDate date, DateTimeZone zone)
    {
        if (line is { From: { } from, To: { } to })
        {
            return Lenient(date + from, date.PlusDays(to <= from ? 1 : 0) + to, zone);
        }

        return new Interval(zone.AtStartOfDay(date).ToInstant(), zone.AtStartOfDay(date.PlusDays(1)).ToInstant());
    }

    private static Interval Lenient(LocalDateTime from, LocalDateTime to, DateTimeZone zone)
    {
        var (start, end) = (zone.AtLeniently(from).ToInstant(), zone.AtLeniently(to).ToInstant());
        return new Interval(start, Instant.Max(start, end));
    }

    private static bool Any(List<Interval> intervals, Instant moment) => intervals.Any(x => x.Contains(moment));
}
