namespace EpisodePlanner.Planning.Tests;

public sealed class StageEstimatorTests
{
    private static readonly StageEstimator Plain = new(new Settings());

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.04, 0)]
    [InlineData(0.05, 1)]
    [InlineData(60, 60)]
    [InlineData(60.04999, 60)]
    [InlineData(60.05, 61)]
    [InlineData(59.95, 60)]
    [InlineData(59.96, 60)]
    [InlineData(60.1, 61)]
    public void PlanningMinutes_AnyLength_RoundToATenthThenUp(decimal minutes, int expected)
    {
        Assert.Equal(expected, PlanningMinutes.Of(minutes));
        Assert.Equal(expected, PlanningMinutes.Of((double)minutes));
    }

    [Fact]
    public void PlanningMinutes_LastBitsApart_AreTheSame()
    {
        Assert.Equal(480, PlanningMinutes.Of(Math.BitIncrement(480.0)));
        Assert.Equal(480, PlanningMinutes.Of(Math.BitDecrement(480.0)));
    }

    [Fact]
    public void Of_NoRange_IsAssumedFromFourFifthsToTwice()
    {
        // 6 h: 4.8, 6, 12 has mean 6.8 h.
        var estimate = Plain.Of(new Stage { Hours = 6 });

        Assert.Equal(408, estimate.Minutes);
        Assert.Equal(PlanningMinutes.Of(60 * new BetaPert(4.8, 6, 12).Quantile(0.9)), estimate.FitMinutes);
        Assert.True(estimate.RangeAssumed);
        Assert.Equal(new BetaPert(4.8, 6, 12), estimate.Hours);
    }

    [Fact]
    public void Of_GivenRange_IsTakenAsGiven()
    {
        // checks §3: (2, 3.5, 8) has mean 4 and p90 5.503342.
        var estimate = Plain.Of(new Stage { Hours = 3.5m, LowHours = 2, HighHours = 8 });

        Assert.Equal(240, estimate.Minutes);
        Assert.Equal(331, estimate.FitMinutes);
        Assert.False(estimate.RangeAssumed);
        Assert.False(estimate.OnBusinessDays);
    }

    [Fact]
    public void Of_OneEndGiven_AssumesTheOther()
    {
        Assert.Equal(new BetaPert(5, 6, 12), Plain.Of(new Stage { Hours = 6, LowHours = 5 }).Hours);
        Assert.Equal(new BetaPert(4.8, 6, 7), Plain.Of(new Stage { Hours = 6, HighHours = 7 }).Hours);
        Assert.True(Plain.Of(new Stage { Hours = 6, LowHours = 5 }).RangeAssumed);
        Assert.True(Plain.Of(new Stage { Hours = 6, HighHours = 7 }).RangeAssumed);
    }

    [Fact]
    public void Of_SettingsWithARange_UseIt()
    {
        var certain = new StageEstimator(new Settings { RangeLow = 1, RangeHigh = 1 });

        var estimate = certain.Of(new Stage { Hours = 12 });

        Assert.Equal((720, 720, true), (estimate.Minutes, estimate.FitMinutes, estimate.RangeAssumed));
    }

    [Fact]
    public void Of_NoLength_IsZero() =>
        Assert.Equal((0, 0), (Plain.Of(new Stage { Hours = 0 }).Minutes, Plain.Of(new Stage { Hours = 0 }).FitMinutes));

    [Fact]
    public void Of_BusinessDays_AreTakenAsTold()
    {
        var estimate = Plain.Of(new Stage { Hours = 1, BusinessDays = 3 });

        Assert.Equal((3 * 1_440, 3 * 1_440), (estimate.Minutes, estimate.FitMinutes));
        Assert.True(estimate.OnBusinessDays);
        Assert.False(estimate.RangeAssumed);
    }

    [Fact]
    public void Of_TailPart_IsEstimatedLikeAStage()
    {
        var part = Plain.Of(new TailPart { Kind = TailKind.Everything, Hours = 16 });

        Assert.Equal(Plain.Of(new Stage { Hours = 16 }), part);
    }

    [Fact]
    public void Of_ThirdsOfAnHour_DoNotDriftUp()
    {
        // 1.25 h with the assumed range: (1 + 5 + 2.5) · 10 minutes = 85, not a minute more.
        Assert.Equal(85, Plain.Of(new Stage { Hours = 1.25m }).Minutes);
    }

    [Theory]
    [InlineData(7, 8)]
    [InlineData(4, 5)]
    public void Of_RangeThatDoesNotHoldTheLikely_IsRefused(int low, int high) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Plain.Of(new Stage { Hours = 6, LowHours = low, HighHours = high }));
}
