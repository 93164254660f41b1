using EpisodePlanner.Planning.Files;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class DemoDatesTests
{
    private static Workshop Demo => WorkshopFile.Read(Samples.Whole).Thing!;

    [Theory]
    [InlineData("2027-03-05", "2027-03-05")]
    [InlineData("2027-03-11", "2027-03-05")]
    [InlineData("2027-03-12", "2027-03-12")]
    [InlineData("2027-03-04", "2027-02-26")]
    [InlineData("2026-03-06", "2026-03-06")]
    [InlineData("2031-08-31", "2031-08-29")]
    public void Move_TheAnchor_ComesToItsLastWeekday(string today, string anchor) =>
        Assert.Equal(Date(anchor), DemoDates.Move(Demo, Date(today)).Demo!.Anchor);

    [Fact]
    public void Move_EveryDate_ByTheSameWeeks()
    {
        var moved = DemoDates.Move(Demo, new LocalDate(2027, 4, 2));

        Assert.Equal(new LocalDate(2027, 4, 14), moved.Settings.DaysToAvoid[0]);
        Assert.Equal(new LocalDate(2027, 3, 29), moved.ToldDates.Single().ToldOn);
        Assert.Equal(new LocalDateTime(2027, 4, 5, 18, 0), moved.People.Find(new Id("nuala"))!.Hours!.Busy[0].From);
        Assert.Equal(new LocalDateTime(2027, 4, 23, 17, 0), moved.Episodes.Single().PinnedSlot);
    }

    // Europe/Dublin is at UTC on 1 March and at UTC+1 on 29 March 2027 (tz database).
    [Fact]
    public void Move_AMoment_KeepsItsWallTime() => Assert.Equal(
        Instant.FromUtc(2027, 3, 29, 20, 40), DemoDates.Move(Demo, new LocalDate(2027, 4, 2)).Log.Find(new Id("l1"))!.At);

    [Fact]
    public void Move_TheEndOfARecurrence_MovesToo()
    {
        var rule = Demo.SlotRules.Single() with { Rule = "FREQ=WEEKLY;UNTIL=20271231T170000Z;BYDAY=FR" };

        var moved = DemoDates.Move(Demo with { SlotRules = [rule] }, new LocalDate(2027, 3, 12));

        Assert.Equal("FREQ=WEEKLY;UNTIL=20280107T170000Z;BYDAY=FR", moved.SlotRules.Single().Rule);
    }

    [Fact]
    public void Move_AWorkshopThatIsNoDemo_StaysAsItIs()
    {
        var workshop = Demo with { Demo = null };

        Assert.Same(workshop, DemoDates.Move(workshop, new LocalDate(2030, 1, 1)));
    }

    [Theory]
    [InlineData(1969)]
    [InlineData(2101)]
    [InlineData(9999)]
    public void Move_ToADayOutOfReach_StaysAsItIs(int year) => Assert.Equal(Demo, DemoDates.Move(Demo, new LocalDate(year, 12, 31)));

    [Fact]
    public void Move_ThereAndBack_GivesTheSameBytes()
    {
        var there = DemoDates.Move(Demo, new LocalDate(2028, 9, 1));

        Assert.Equal(Samples.Whole, WorkshopFile.Write(DemoDates.Move(there, new LocalDate(2027, 3, 5))));
    }

    private static LocalDate Date(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
