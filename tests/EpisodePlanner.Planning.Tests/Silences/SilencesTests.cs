using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class SilencesTests
{
    private static readonly LocalDate Today = Text.Day("2027-03-20");

    [Fact]
    public void Past_UploadsUntilToday_AreEndedByTheNextAndTheLastIsOpen()
    {
        var silences = Silences.Past(Days("2027-03-01 2027-03-08 2027-03-08 2027-03-15 2027-04-01"), Today);

        Assert.Equal(
            [
                new Silence(Text.Day("2027-03-01"), Text.Day("2027-03-08"), 7),
                new Silence(Text.Day("2027-03-08"), Text.Day("2027-03-15"), 7),
                new Silence(Text.Day("2027-03-15"), null, 5),
            ],
            silences);
        Assert.True(silences[^1].OpenEnded);
    }

    [Fact]
    public void Past_NothingOutYet_IsEmpty() => Assert.Empty(Silences.Past(Days("2027-04-01"), Today));

    /// <summary>Scenario 2: uncut 32 days; cut at both 13, 15 and 14.</summary>
    [Fact]
    public void Forecast_GorseCutAtBoth_HasThreeSilencesAndAnOpenEnd()
    {
        var silences = Silences.Forecast(
            Text.Day("2027-03-06"), Days("2027-03-19 2027-04-03 2027-04-17"), Text.Day("2027-04-30"));

        Assert.Equal([13, 15, 14, 13], silences.Select(silence => silence.Days));
        Assert.Equal([false, false, false, true], silences.Select(silence => silence.OpenEnded));
    }

    [Fact]
    public void Forecast_NothingPlanned_IsOneOpenSilence()
    {
        var silence = Assert.Single(Silences.Forecast(Text.Day("2027-03-06"), [], Text.Day("2027-04-30")));

        Assert.Equal(new Silence(Text.Day("2027-03-06"), null, 55), silence);
    }

    [Fact]
    public void Forecast_NothingOutYet_BeginsWithTheFirstPlanned()
    {
        var silences = Silences.Forecast(null, Days("2027-03-19 2027-04-03 2027-06-01"), Text.Day("2027-04-30"));

        Assert.Equal([15, 27], silences.Select(silence => silence.Days));
    }

    /// <summary>Gaps 7, 7, 14 days: mean 9.3333, mean wait of a random visitor 5.25 d; checks §4 [C].</summary>
    [Fact]
    public void GapStatistics_SevenSevenFourteen_AreThoseOfTheTable()
    {
        var silences = Silences.Past(Days("2027-01-01 2027-01-08 2027-01-15 2027-01-29"), Text.Day("2027-03-01"));

        var statistics = GapStatistics.Of(silences);

        Assert.Equal(9.3333, statistics!.Value.Mean, 5e-5);
        Assert.Equal(5.25, statistics.Value.MeanWait, 1e-12);
    }

    [Fact]
    public void GapStatistics_OpenSilenceOnly_AreNone() =>
        Assert.Null(GapStatistics.Of(Silences.Past(Days("2027-01-01"), Today)));

    /// <summary>Scenario 10: A last out 1 March, promise 21 days; B uploads 10 March. A is due by 22 March.</summary>
    [Fact]
    public void UploadDays_AnotherSeriesUploads_EndTheChannelsSilenceOnly()
    {
        var workshop = new Workshop
        {
            Format = 1,
            Name = "Two series",
            Zone = "Europe/Dublin",
            Uploads =
            [
                Upload("u2", "b", "2027-03-10"),
                Upload("u1", "a", "2027-03-01"),
                Upload("u0", "a", "2027-02-15"),
            ],
        };
        var promise = new Promise { LongestSilenceDays = 21 };

        var own = UploadDays.OfSeries(workshop, new Id("a"));
        var channel = UploadDays.OfChannel(workshop);

        Assert.Equal(Text.Day("2027-03-22"), PromiseKeeping.DueBy(own, promise));
        Assert.Equal(Text.Day("2027-03-31"), PromiseKeeping.DueBy(channel, promise));
        Assert.Equal(19, Silences.Past(own, Today)[^1].Days);
        Assert.Equal(10, Silences.Past(channel, Today)[^1].Days);
    }

    internal static List<LocalDate> Days(string dates) =>
        [.. dates.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Text.Day)];

    private static Upload Upload(string id, string series, string date) =>
        new() { Id = new Id(id), Series = new Id(series), Date = Text.Day(date) };
}
