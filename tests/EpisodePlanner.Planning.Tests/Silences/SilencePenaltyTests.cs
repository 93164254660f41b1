using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class SilencePenaltyTests
{
    private static readonly LocalDate Start = Text.Day("2026-12-05");

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 80)];

    [Theory]
    [InlineData(-5, 0)]
    [InlineData(0, 0)]
    [InlineData(11, 121)]
    [InlineData(30, 900)]
    [InlineData(31, 960)]
    [InlineData(40, 1_500)]
    public void Weight_DaysBeyond_AreSquaredAndALineAfterThirty(int beyond, int expected) =>
        Assert.Equal(expected, SilencePenalty.Weight(beyond));

    [Theory]
    [InlineData(30, 900)]
    [InlineData(31, 900)]
    [InlineData(int.MaxValue, 900)]
    public void OpenWeight_DaysBeyond_StayAfterThirty(int beyond, int expected) =>
        Assert.Equal(expected, SilencePenalty.OpenWeight(beyond));

    /// <summary>So that two long silences never weigh more than one that is as long as both: nothing ready is put off.</summary>
    [Fact]
    public void Weight_IsConvex()
    {
        for (var beyond = -5; beyond < 400; beyond++)
        {
            var (before, here, after) = (SilencePenalty.Weight(beyond - 1), SilencePenalty.Weight(beyond), SilencePenalty.Weight(beyond + 1));
            Assert.True(after - here >= here - before, $"{beyond}");
        }
    }

    [Fact]
    public void OfDays_GorseUncut_IsElevenSquaredAndTheOpenEnd()
    {
        var (last, next) = (Day("2027-03-06"), Day("2027-04-07"));

        Assert.Equal(121, SilencePenalty.OfDays(last, [next], 21, next + 21));
        Assert.Equal(121 + 4, SilencePenalty.OfDays(last, [next], 21, next + 23));
        Assert.Equal(900, SilencePenalty.OfDays(last, [], 21, last + 200));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void OfDays_RandomUploads_AgreesWithTheOverruns(int seed)
    {
        var dice = new Dice(seed);
        var uploads = RandomUploads(dice);
        var through = Start.PlusDays(dice.Between(0, 420));
        var longest = dice.Between(1, 40);

        var plain = SilencePenalty.Of(PromiseKeeping.Overruns(
            [.. uploads.Distinct()], new Promise { LongestSilenceDays = longest }, through));

        int[] planned = [.. uploads.Skip(1).Select(SilencePenalty.DayNumber)];
        var (last, end) = (SilencePenalty.DayNumber(uploads[0]), SilencePenalty.DayNumber(through));
        Assert.Equal(plain, SilencePenalty.OfDays(last, planned, longest, end));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void OfMonths_RandomUploads_AgreesWithTheOverruns(int seed)
    {
        var dice = new Dice(seed);
        List<LocalDate> uploads = [.. RandomUploads(dice).Distinct()];
        var through = Start.PlusDays(dice.Between(0, 420));
        var each = dice.Between(1, 4);

        var plain = SilencePenalty.Of(
            PromiseKeeping.Overruns(uploads, new Promise { UploadsPerMonth = each }, through));

        int[] days = [.. uploads.Select(SilencePenalty.DayNumber)];
        var months = SilencePenalty.Months(uploads[0], through);
        Assert.Equal(plain, SilencePenalty.OfMonths(days, each, months, SilencePenalty.DayNumber(through)));
    }

    [Fact]
    public void Seeds_Random_MeetBothKeptAndBrokenPromises()
    {
        var weights = Enumerable.Range(1, 80)
            .Select(seed => RandomUploads(new Dice(seed)).Distinct().ToList())
            .Select(uploads => PromiseKeeping.Overruns(
                uploads, new Promise { UploadsPerMonth = 1 }, Start.PlusDays(100)))
            .Select(SilencePenalty.Of)
            .ToList();

        Assert.Contains(0, weights);
        Assert.Contains(weights, weight => weight > 0);
    }

    [Fact]
    public void DayNumber_Epoch_IsZero()
    {
        Assert.Equal(0, Day("1970-01-01"));
        Assert.Equal(-1, Day("1969-12-31"));
        Assert.Equal(20_518, Day("2026-03-06"));
    }

    private static List<LocalDate> RandomUploads(Dice dice)
    {
        List<LocalDate> uploads = [Start];
        for (var left = dice.Between(0, 25); left > 0; left--)
        {
            uploads.Add(uploads[^1].PlusDays(dice.Between(0, dice.Between(1, 50))));
        }

        return uploads;
    }

    private static int Day(string date) => SilencePenalty.DayNumber(Text.Day(date));
}
