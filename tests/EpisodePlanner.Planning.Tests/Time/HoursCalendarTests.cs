using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class HoursCalendarTests
{
    // Monday 8 March 2027, 08:00 in Dublin, for two weeks.
    private static readonly TimeAxis Axis = Text.Axis("2027-03-08T08:00:00Z", "Europe/Dublin", 14);

    [Fact]
    public void Of_NoHours_IsAlwaysOpen() =>
        Assert.Equal([new MinuteSpan(0, Axis.Horizon)], HoursCalendar.Of(null, Axis).Spans());

    [Fact]
    public void Of_EmptyHours_IsNeverOpen() => Assert.Equal(0, HoursCalendar.Of(new OpenHours(), Axis).Count);

    [Fact]
    public void Of_WholeDays_JoinToTheWholePlan()
    {
        var hours = new OpenHours { Weekly = [Line("00:00", "00:00", [.. Enum.GetValues<IsoDayOfWeek>().Skip(1)])] };

        Assert.Equal([new MinuteSpan(0, Axis.Horizon)], HoursCalendar.Of(hours, Axis).Spans());
    }

    [Fact]
    public void Of_NightBegunBeforeThePlan_IsOpenAtItsStart()
    {
        var hours = new OpenHours { Weekly = [Line("22:00", "09:30", IsoDayOfWeek.Sunday)] };

        Assert.Equal(new MinuteSpan(0, 90), HoursCalendar.Of(hours, Axis)[0]);
    }

    [Fact]
    public void Of_ClosedDay_CutsTheNightThatSpillsInAndLeavesItsOwnMorning()
    {
        // Tuesday 9 March closed: Monday's night ends at midnight, Tuesday's own night begins at midnight too.
        var hours = new OpenHours
        {
            Weekly = [Line("20:00", "02:00", IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday)],
            Dated = [new DatedHours { Kind = DatedHoursKind.Closed, On = Text.Day("2027-03-09") }],
        };

        var calendar = HoursCalendar.Of(hours, Axis);

        Assert.Equal(new MinuteSpan(720, 960), calendar[0]);
        Assert.Equal(new MinuteSpan(2_400, 2_520), calendar[1]);
    }

    [Fact]
    public void Of_ExtraOnAClosedDayWithBusyTime_OpensAfterClosingAndBusyCutsLast()
    {
        var hours = new OpenHours
        {
            Weekly = [Line("18:00", "22:00", IsoDayOfWeek.Monday)],
            Dated =
            [
                new DatedHours
                {
                    Kind = DatedHoursKind.Extra,
                    On = Text.Day("2027-03-08"),
                    From = Text.Time("10:00"),
                    To = Text.Time("12:00"),
                },
                new DatedHours
                {
                    Kind = DatedHoursKind.Closed,
                    On = Text.Day("2027-03-08"),
                    Through = Text.Day("2027-03-20"),
                },
            ],
            Busy = [new BusyTime { From = Text.Local("2027-03-08T11:00:00"), To = Text.Local("2027-03-08T11:30:00") }],
        };

        Assert.Equal([new MinuteSpan(120, 180), new MinuteSpan(210, 240)], HoursCalendar.Of(hours, Axis).Spans());
    }

    [Fact]
    public void Of_ClosedForAllTime_IsNeverOpen()
    {
        var hours = new OpenHours
        {
            Weekly = [Line("18:00", "22:00", IsoDayOfWeek.Monday)],
            Dated =
            [
                new DatedHours
                {
                    Kind = DatedHoursKind.Closed,
                    On = new LocalDate(1, 1, 1),
                    Through = new LocalDate(9999, 12, 31),
                },
            ],
        };

        Assert.Equal(0, HoursCalendar.Of(hours, Axis).Count);
    }

    [Theory]
    [InlineData("Europe/Dublin", "2027-03-27T12:00:00Z", 11 * 60)]
    [InlineData("Europe/Dublin", "2027-10-30T12:00:00Z", 13 * 60)]
    [InlineData("Australia/Lord_Howe", "2027-10-02T00:00:00Z", (11 * 60) + 30)]
    [InlineData("Australia/Lord_Howe", "2027-04-03T00:00:00Z", (12 * 60) + 30)]
    public void Of_NightWithAClockChange_HasTheHoursThatPass(string zone, string plannedAt, int minutes)
    {
        var hours = new OpenHours { Weekly = [Line("20:00", "08:00", IsoDayOfWeek.Saturday)] };

        Assert.Equal(minutes, HoursCalendar.Of(hours, Text.Axis(plannedAt, zone, 3)).TotalWork);
    }

    [Theory]
    [InlineData("Europe/Dublin", "2027-03-28T00:00:00Z", 23)]
    [InlineData("Europe/Dublin", "2027-10-30T23:00:00Z", 25)]
    [InlineData("Europe/Dublin", "2027-07-03T23:00:00Z", 24)]
    public void Of_WholeDayWithAClockChange_HasItsHours(string zone, string plannedAt, int hours)
    {
        var always = new OpenHours { Weekly = [Line("00:00", "00:00", IsoDayOfWeek.Sunday)] };

        Assert.Equal(hours * 60, HoursCalendar.Of(always, Text.Axis(plannedAt, zone, 3)).TotalWork);
    }

    [Fact]
    public void BusinessDays_TwoWeeks_AreFivesOfWholeDays()
    {
        // From Monday 08:00 to Saturday 00:00, the week after, and nothing of the Monday at 08:00 when the plan ends.
        var calendar = HoursCalendar.BusinessDays(Axis);

        Assert.Equal(new MinuteSpan(0, (5 * 1_440) - 480), calendar[0]);
        Assert.Equal(new MinuteSpan((7 * 1_440) - 480, (12 * 1_440) - 480), calendar[1]);
        Assert.Equal(new MinuteSpan((14 * 1_440) - 480, 14 * 1_440), calendar[2]);
        Assert.Equal(3, calendar.Count);
    }

    [Fact]
    public void LookAt_TwoTimes_AreSingleMinutesOfEveryDay()
    {
        var calendar = HoursCalendar.LookAt([Text.Time("07:30"), Text.Time("10:00")], Axis);

        Assert.Equal(28, calendar.TotalWork);
        Assert.Equal(new MinuteSpan(120, 121), calendar[0]);
        Assert.Equal(new MinuteSpan(1_440 - 30, 1_440 - 29), calendar[1]);
    }

    [Fact]
    public void Weekly_QuietHours_AreTheLinesAlone() =>
        Assert.Equal(2 * 9 * 60, HoursCalendar.Weekly([Line("22:00", "07:00", IsoDayOfWeek.Friday)], Axis).TotalWork);

    private static WeeklyHours Line(string from, string to, params IsoDayOfWeek[] days) =>
        new() { Days = [.. days], From = Text.Time(from), To = Text.Time(to) };
}
