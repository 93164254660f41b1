using NodaTime;

namespace EpisodePlanner.Planning.Tests;

/// <summary>RFC 5545 §3.8.5.3 [P], 09:00 in America/New_York, and the modern rows of checks §4 [C].</summary>
public sealed class RecurrenceRfcTests
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];

    [Theory]
    [InlineData(
        "1997-09-02",
        "FREQ=WEEKLY;COUNT=10",
        "1997-09-02 1997-09-09 1997-09-16 1997-09-23 1997-09-30 1997-10-07 1997-10-14 1997-10-21 1997-10-28 1997-11-04")]
    [InlineData(
        "1997-09-02",
        "FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH",
        "1997-09-02 1997-09-04 1997-09-09 1997-09-11 1997-09-16 1997-09-18 1997-09-23 1997-09-25 1997-09-30 1997-10-02")]
    [InlineData(
        "1997-09-05",
        "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
        "1997-09-05 1997-10-03 1997-11-07 1997-12-05 1998-01-02 1998-02-06 1998-03-06 1998-04-03 1998-05-01 1998-06-05")]
    [InlineData(
        "1997-09-07",
        "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
        "1997-09-07 1997-09-28 1997-11-02 1997-11-30 1998-01-04 1998-01-25 1998-03-01 1998-03-29 1998-05-03 1998-05-31")]
    [InlineData("1997-09-04", "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", "1997-09-04 1997-10-07 1997-11-06")]
    [InlineData(
        "2007-01-15",
        "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
        "2007-01-15 2007-01-30 2007-02-15 2007-03-15 2007-03-30")]
    public void Occurrences_RuleThatEnds_AreThoseOfTheRfc(string first, string rule, string expected) =>
        Assert.Equal(expected, string.Join(' ', DaysAtNine(rule, first, "2037-01-01T00:00:00Z")));

    [Fact]
    public void Occurrences_MonthlyThirdLastDay_BeginAsInTheRfc()
    {
        var days = DaysAtNine("FREQ=MONTHLY;BYMONTHDAY=-3", "1997-09-28", "1998-03-01T00:00:00Z");

        Assert.Equal("1997-09-28 1997-10-29 1997-11-28 1997-12-29 1998-01-29 1998-02-26", string.Join(' ', days));
    }

    [Fact]
    public void Occurrences_DailyUntilChristmasEve_Are113AcrossTheClockChange()
    {
        var times = Times("FREQ=DAILY;UNTIL=19971224T000000Z", "1997-09-02", "1999-01-01T00:00:00Z");

        Assert.Equal(113, times.Count);
        Assert.Equal(Text.Moment("1997-10-25T13:00:00Z"), times[53].Moment);
        Assert.Equal(Text.Moment("1997-10-26T14:00:00Z"), times[54].Moment);
        Assert.Equal(Text.Moment("1997-12-23T14:00:00Z"), times[^1].Moment);
    }

    /// <summary>Except days as a slot rule names them: EXDATE 19970902T090000.</summary>
    [Fact]
    public void Windows_FridaysThe13thWithoutTheFirstDay_AreThoseOfTheRfc()
    {
        var rule = new SlotRule
        {
            Id = new Id("thirteenth"),
            From = Text.Day("1997-09-02"),
            At = Text.Time("09:00"),
            Rule = "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13",
            Except = [Text.Day("1997-09-02")],
        };
        var axis = Text.Axis("1997-09-01T00:00:00Z", "America/New_York", 1_200);

        var days = SlotWindows.Of([rule], [], axis).Select(window => window.LocalOpening.Date);

        Assert.Equal(
            "1998-02-13 1998-03-13 1998-11-13 1999-08-13 2000-10-13",
            string.Join(' ', days.Select(day => day.ToString("uuuu-MM-dd", null))));
    }

    /// <summary>Scenario 7 and RFC 5545 §3.3.5 [P]: the nights on which the clocks change.</summary>
    [Theory]
    [InlineData("2007-03-11T02:30:00", "2007-03-11T07:30:00Z")]
    [InlineData("2007-11-04T01:30:00", "2007-11-04T05:30:00Z")]
    [InlineData("2027-03-14T02:30:00", "2027-03-14T07:30:00Z")]
    [InlineData("2027-11-07T01:30:00", "2027-11-07T05:30:00Z")]
    public void Occurrences_NightOfAClockChange_AreTheMomentsOfTheRfc(string local, string moment)
    {
        var first = Text.Local(local).PlusDays(-2);
        var from = Text.Moment(moment) - Duration.FromHours(12);

        var times = Recurrence.Parse("FREQ=DAILY").Occurrences(first, NewYork, from, from + Duration.FromHours(24));

        Assert.Equal(new Occurrence(Text.Local(local), Text.Moment(moment)), Assert.Single(times));
    }

    [Fact]
    public void Occurrences_NewYorkFridays2026_StayAtFiveOnTheClock()
    {
        var times = Recurrence.Parse("FREQ=WEEKLY").Occurrences(
            Text.Local("2026-10-16T17:00:00"),
            NewYork,
            Text.Moment("2026-10-01T00:00:00Z"),
            Text.Moment("2026-11-21T00:00:00Z"));

        Assert.Equal(
            "2026-10-16T21:00:00Z 2026-10-23T21:00:00Z 2026-10-30T21:00:00Z "
                + "2026-11-06T22:00:00Z 2026-11-13T22:00:00Z 2026-11-20T22:00:00Z",
            string.Join(' ', times.Select(time => time.Moment)));
    }

    [Fact]
    public void Windows_LondonEverySecondSaturday2026_SkipTheExceptedOneAndCountIt()
    {
        var rule = new SlotRule
        {
            Id = new Id("saturday"),
            From = Text.Day("2026-10-17"),
            At = Text.Time("15:00"),
            Rule = "FREQ=WEEKLY;INTERVAL=2;COUNT=5",
            Except = [Text.Day("2026-11-14")],
        };
        var axis = Text.Axis("2026-10-01T00:00:00Z", "Europe/London", 365);

        var moments = SlotWindows.Of([rule], [], axis).Select(window => axis.MomentOf(window.Opening));

        Assert.Equal(
            "2026-10-17T14:00:00Z 2026-10-31T15:00:00Z 2026-11-28T15:00:00Z 2026-12-12T15:00:00Z",
            string.Join(' ', moments));
    }

    private static IEnumerable<string> DaysAtNine(string rule, string first, string to)
    {
        var times = Times(rule, first, to);
        Assert.All(times, time => Assert.Equal(Text.Time("09:00"), time.Moment.InZone(NewYork).TimeOfDay));
        return times.Select(time => time.Moment.InZone(NewYork).Date.ToString("uuuu-MM-dd", null));
    }

    private static List<Occurrence> Times(string rule, string first, string to) =>
        [.. Recurrence.Parse(rule).Occurrences(
            Text.Day(first) + Text.Time("09:00"), NewYork, Text.Moment("1990-01-01T00:00:00Z"), Text.Moment(to))];
}
