using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class DatedRulesTests
{
    [Fact]
    public void Check_ToldDateOfUnknownEpisode() => Breaks.One(
        WithToldDate("told-1", t => t with { Episode = Id("ep-22") }),
        "$.toldDates['told-1'].episode",
        "There is no episode 'ep-22'; the nearest is 'ep-2'.");

    [Fact]
    public void Check_ToldDateAlreadyOver() => Breaks.One(
        WithToldDate("told-1", t => t with { Date = Day(1, 8) }),
        "$.toldDates['told-1'].date",
        "The date was over when it was told; put it on toldOn or later.");

    [Fact]
    public void Check_TimedLineEndsBeforeItBegins() => Breaks.One(
        WithTimedLine("line-1", l => l with { From = Day(3, 2), DueBy = null }),
        "$.timedLines['line-1'].until",
        "The line ends before it begins; put 'until' on 'from' or later.");

    [Theory]
    [InlineData(3, 2)]
    [InlineData(1, 4)]
    public void Check_TimedLineDueWhenNotTrue(int month, int day) => Breaks.One(
        WithTimedLine("line-1", l => l with { From = Day(1, 5), DueBy = Day(month, day) }),
        "$.timedLines['line-1'].dueBy",
        "The line is due when it isn't true; put dueBy between 'from' and 'until'.");

    [Fact]
    public void Check_TimedLineOfUnknownEpisode() => Breaks.At(
        WithTimedLine("line-1", l => l with { Episode = Id("x") }), "$.timedLines['line-1'].episode");

    [Fact]
    public void Check_BookingOfUnknownPlace() => Breaks.One(
        WithBooking("book-1", b => b with { Place = Id("yards") }),
        "$.bookings['book-1'].place",
        "There is no place 'yards'; the nearest is 'yard'.");

    [Fact]
    public void Check_BookingWithoutLength() => Breaks.One(
        WithBooking("book-1", b => b with { To = b.From }),
        "$.bookings['book-1'].to",
        "The booking ends before it begins; put 'to' after 'from'.");
}
