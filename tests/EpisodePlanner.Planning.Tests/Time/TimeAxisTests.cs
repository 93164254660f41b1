using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class TimeAxisTests
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];

    [Theory]
    [InlineData(0, 0)]
    [InlineData(59, 0)]
    [InlineData(-1, -60)]
    [InlineData(60, 60)]
    public void PlannedAt_WithSeconds_FloorsToTheMinute(int seconds, int expected)
    {
        var axis = new TimeAxis(Instant.FromUnixTimeSeconds(seconds) + Duration.FromNanoseconds(7), NewYork, 10);

        Assert.Equal(Instant.FromUnixTimeSeconds(expected), axis.PlannedAt);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(IntervalCalendar.MaximumMinute + 1)]
    public void Constructor_HorizonOutsideItsRange_IsRefused(int horizon) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Axis(horizon));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(119, 1)]
    [InlineData(-1, -1)]
    [InlineData(-60, -1)]
    [InlineData(-61, -2)]
    public void MinuteOf_AnyMoment_FloorsToTheMinute(int seconds, int expected)
    {
        var axis = Axis(100);

        Assert.Equal(expected, axis.MinuteOf(axis.PlannedAt + Duration.FromSeconds(seconds)));
    }

    [Fact]
    public void MinuteOf_TheEndsOfTheCalendar_IsAsFarAsItGoes()
    {
        var axis = Axis(100);

        Assert.Equal(TimeAxis.Furthest, axis.MinuteOf(new LocalDate(9999, 12, 31)));
        Assert.Equal(-TimeAxis.Furthest, axis.MinuteOf(new LocalDate(1, 1, 2)));
    }

    /// <summary>RFC 5545 §3.3.5 [P], with the date of the rule in force since 2007.</summary>
    [Theory]
    [InlineData("2007-03-11T02:30:00", "2007-03-11T07:30:00Z")]
    [InlineData("2007-11-04T01:30:00", "2007-11-04T05:30:00Z")]
    public void Resolve_LocalTimeMissingOrTwice_FollowsTheRfc(string local, string moment) =>
        Assert.Equal(Text.Moment(moment), TimeAxis.Resolve(Text.Local(local), NewYork));

    [Fact]
    public void MinuteOf_LocalTimeInAGap_LiesAnHourLaterOnTheClock()
    {
        var axis = new TimeAxis(Text.Moment("2027-03-14T05:00:00Z"), NewYork, 2_880);

        var minute = axis.MinuteOf(Text.Local("2027-03-14T02:30:00"));

        Assert.Equal(150, minute);
        Assert.Equal(Text.Local("2027-03-14T03:30:00"), axis.LocalOf(minute).LocalDateTime);
    }

    [Fact]
    public void MinuteOf_Day_IsItsFirstMomentEvenWithoutMidnight()
    {
        // Clocks in São Paulo went forward at midnight on 4 November 2018: that day began at 01:00 [M, tz database].
        var zone = DateTimeZoneProviders.Tzdb["America/Sao_Paulo"];
        var axis = new TimeAxis(Text.Moment("2018-11-03T03:00:00Z"), zone, 10_000);

        Assert.Equal(1_440, axis.MinuteOf(new LocalDate(2018, 11, 4)));
        Assert.Equal(1_440 + (23 * 60), axis.MinuteOf(new LocalDate(2018, 11, 5)));
    }

    [Fact]
    public void MinuteOf_DayThatTheZoneLeftOut_IsEmpty()
    {
        // Samoa went from 29 to 31 December 2011 [M, in the tz database].
        var zone = DateTimeZoneProviders.Tzdb["Pacific/Apia"];
        var axis = new TimeAxis(Text.Moment("2011-12-29T10:00:00Z"), zone, 10_000);

        Assert.Equal(1_440, axis.MinuteOf(new LocalDate(2011, 12, 30)));
        Assert.Equal(1_440, axis.MinuteOf(new LocalDate(2011, 12, 31)));
        Assert.Equal(0, axis.MinuteOf(new LocalDate(2011, 12, 29)));
    }

    [Theory]
    [InlineData("Europe/Dublin", "2027-03-20T08:07:00Z")]
    [InlineData("America/New_York", "2027-10-30T23:59:00Z")]
    [InlineData("Australia/Lord_Howe", "2027-03-28T00:00:00Z")]
    [InlineData("America/Sao_Paulo", "2018-10-20T12:00:00Z")]
    [InlineData("Pacific/Apia", "2011-12-20T12:00:00Z")]
    [InlineData("Asia/Kathmandu", "2027-01-01T12:00:00Z")]
    public void Days_AcrossClockChanges_AgreeWithTheZone(string zone, string plannedAt)
    {
        var axis = new TimeAxis(Text.Moment(plannedAt), DateTimeZoneProviders.Tzdb[zone], 25 * 1_440);

        for (var day = 0; day < axis.Days.Count; day++)
        {
            Assert.Equal(axis.MinuteOf(axis.Days.DateOf(day)), axis.Days.StartOf(day));
            for (var time = 0; time < 1_440; time += 10)
            {
                var local = LocalTime.FromMinutesSinceMidnight(time);
                Assert.Equal(axis.MinuteOf(axis.Days.DateOf(day) + local), axis.Days.MinuteOf(day, local));
            }
        }

        Assert.Equal(axis.DateOf(0).PlusDays(-1), axis.Days.First);
        Assert.Equal(axis.DateOf(axis.Horizon), axis.Days.DateOf(axis.Days.Count - 1));
    }

    private static TimeAxis Axis(int horizon) => new(Text.Moment("2027-03-08T08:00:00Z"), NewYork, horizon);
}
