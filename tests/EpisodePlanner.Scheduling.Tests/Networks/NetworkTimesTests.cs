using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Networks;

public sealed class NetworkTimesTests
{
    private const int Long = 200_000;

    [Fact]
    public void Of_NoActivities_EndsAtZeroWithNothingCritical()
    {
        var times = Build.Times(Array.Empty<long>());
        Assert.Equal(0, times.End);
        Assert.Empty(times.Critical);
        Assert.Empty(times.CriticalPath);
    }

    [Fact]
    public void EarlyStart_LinkAllowsLessThanZero_IsZeroAndNotDriven()
    {
        var times = Build.Times([2, 1], new NetworkLink(0, 1, LinkKind.After, -5));
        Assert.Equal([0, 0], times.EarlyStart);
        Assert.Equal(3, times.Slack(0));
        Assert.False(times.IsDriving(0));
        Assert.Equal([0], times.Critical);
    }

    [Fact]
    public void Critical_TwoPathsOfOneLength_HoldsBothAndThePathTheFirst()
    {
        var times = Build.Times(
            [1, 4, 4, 1], Build.After(0, 2), Build.After(0, 1), Build.After(1, 3), Build.After(2, 3));
        Assert.Equal([0, 2, 1, 3], times.Critical);
        Assert.Equal([new(0, null), new(1, 1), new(3, 2)], times.CriticalPath);
    }

    [Fact]
    public void Critical_ActivityFinishesLastWithoutSuccessorAtTheEnd_IsTracedFromItsOwnFinish()
    {
        // The first outlasts its successor, which starts with it.
        var times = Build.Times([9, 2], new NetworkLink(0, 1, LinkKind.TogetherStart, 1));
        Assert.Equal(9, times.End);
        Assert.Equal([0], times.Critical);
        Assert.Equal([0, 6], times.TotalFloat);
    }

    [Fact]
    public void FreeFloat_TiedOnlyByItsStart_MayExceedTotalFloat()
    {
        var times = Build.Times([9, 5, 2], new NetworkLink(0, 2, LinkKind.TogetherStart), Build.After(1, 2));
        Assert.Equal(0, times.TotalFloat[0]);
        Assert.Equal(5, times.FreeFloat[0]);
    }

    [Fact]
    public void Of_LongChain_NeedsNoDeepStack()
    {
        var times = Build.Times([.. Enumerable.Repeat(3L, Long)], Build.Chain(Long));
        Assert.Equal(3L * Long, times.End);
        Assert.Equal(Enumerable.Range(0, Long), times.Critical);
        Assert.Equal(Enumerable.Range(0, Long), times.CriticalPath.Select(step => step.Activity));
    }

    [Fact]
    public void TryCreate_LongCircle_NamesEveryMember()
    {
        var refusals = Build.Refusals(new long[Long], [.. Build.Chain(Long), Build.After(Long - 1, 0)]);
        Assert.Equal(Enumerable.Range(0, Long), Assert.IsType<LinkCircle>(Assert.Single(refusals)).Members);
    }

    [Theory]
    [InlineData(LinkKind.After, 1)]
    [InlineData(LinkKind.After, -1)]
    [InlineData(LinkKind.TogetherStart, 1)]
    [InlineData(LinkKind.TogetherStart, -1)]
    [InlineData(LinkKind.TogetherFinish, 1)]
    [InlineData(LinkKind.TogetherFinish, -1)]
    [InlineData(LinkKind.StartToFinish, 1)]
    [InlineData(LinkKind.StartToFinish, -1)]
    public void Of_LargestSpan_IsExact(LinkKind kind, int sign)
    {
        const long Third = ActivityNetwork.LargestSpan / 3;
        var times = Build.Times([Third, Third], new NetworkLink(0, 1, kind, sign * Third));
        var difference = kind switch
        {
            LinkKind.After => (Third * sign) + Third,
            LinkKind.TogetherStart or LinkKind.TogetherFinish => Third * sign,
            _ => (Third * sign) - Third,
        };
        Assert.Equal([0, Math.Max(0, difference)], times.EarlyStart);
        Assert.Equal(times.EarlyStart[1] - difference, times.Slack(0));
        Assert.Equal(Math.Max(0, difference) + Third, times.End);
    }
}
