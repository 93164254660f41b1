using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class PromiseKeepingTests
{
    private static readonly Promise ThreeWeeks = new() { LongestSilenceDays = 21 };
    private static readonly Promise TwoAMonth = new() { UploadsPerMonth = 2 };

    [Theory]
    [InlineData("2027-03-27", 0)]
    [InlineData("2027-03-28", 1)]
    [InlineData("2027-04-07", 11)]
    public void Overruns_UploadAfterTheLastDay_CountTheDaysBeyond(string next, int days)
    {
        var uploads = SilencesTests.Days($"2027-03-06 {next}");

        var overruns = PromiseKeeping.Overruns(uploads, ThreeWeeks, uploads[1]);

        Assert.Equal(days, overruns.Sum(overrun => overrun.Days));
        Assert.All(overruns, x => Assert.Equal(new Overrun(Text.Day("2027-03-27"), uploads[1], days), x));
    }

    [Fact]
    public void Overruns_OpenEnd_CountsToTheLastDayLookedAt()
    {
        var uploads = SilencesTests.Days("2027-03-06 2027-05-01");

        Assert.Equal(
            [new Overrun(Text.Day("2027-03-27"), null, 4)],
            PromiseKeeping.Overruns(uploads, ThreeWeeks, Text.Day("2027-03-31")));
    }

    [Theory]
    [InlineData("2027-03-06", "2027-04-30")]
    [InlineData("2027-03-01", "2027-03-31")]
    [InlineData("2027-03-01 2027-03-02", "2027-04-30")]
    [InlineData("2027-02-10 2027-03-05 2027-04-02", "2027-04-30")]
    [InlineData("2027-02-10 2027-03-05", "2027-03-31")]
    public void DueBy_TwoAMonth_IsTheEndOfTheFirstMonthStillOpen(string uploads, string due) =>
        Assert.Equal(Text.Day(due), PromiseKeeping.DueBy(SilencesTests.Days(uploads), TwoAMonth));

    [Fact]
    public void DueBy_NothingOutYet_IsNull()
    {
        Assert.Null(PromiseKeeping.DueBy([], TwoAMonth));
        Assert.Null(PromiseKeeping.DueBy([], ThreeWeeks));
    }

    [Fact]
    public void Overruns_TwoAMonth_CountFromEachMonthsEndToItsSecondUpload()
    {
        // February is the first full month: second upload 5 March, 5 days late. March has the 5th and then 10 April: 10
        // days. April has one, and none follows: 16 days by 16 May. May is not over.
        var uploads = SilencesTests.Days("2027-01-20 2027-02-10 2027-03-05 2027-04-10");

        Assert.Equal(
            [
                new Overrun(Text.Day("2027-02-28"), Text.Day("2027-03-05"), 5),
                new Overrun(Text.Day("2027-03-31"), Text.Day("2027-04-10"), 10),
                new Overrun(Text.Day("2027-04-30"), null, 16),
            ],
            PromiseKeeping.Overruns(uploads, TwoAMonth, Text.Day("2027-05-16")));
    }

    [Fact]
    public void Overruns_TwoAMonthKept_AreNone() =>
        Assert.Empty(PromiseKeeping.Overruns(
            SilencesTests.Days("2027-01-20 2027-02-01 2027-02-28 2027-03-05 2027-03-31"),
            TwoAMonth,
            Text.Day("2027-04-29")));

    [Fact]
    public void Overruns_LastDayOfTheMonth_IsNotBeyondIt() =>
        Assert.Empty(PromiseKeeping.Overruns(SilencesTests.Days("2027-01-20"), TwoAMonth, Text.Day("2027-02-28")));

    [Fact]
    public void Overruns_EmptyPromise_IsRefused() =>
        Assert.Throws<ArgumentException>(
            () => PromiseKeeping.Overruns(SilencesTests.Days("2027-01-20"), new Promise(), new LocalDate(2027, 3, 1)));

    [Theory]
    [InlineData(21, 2)]
    [InlineData(23, 0)]
    [InlineData(30, 0)]
    public void Beyond_SilenceAgainstDays_IsNeverNegative(int longest, int expected) =>
        Assert.Equal(expected, PromiseKeeping.Beyond(new Silence(Text.Day("2027-03-06"), null, 23), longest));
}
