namespace EpisodePlanner.Scheduling.Tests;

public sealed class IntervalCalendarTests
{
    private static readonly IntervalCalendar TwoEvenings =
        IntervalCalendar.FromSpans([new MinuteSpan(100, 200), new MinuteSpan(300, 400)]);

    [Fact]
    public void FromSpans_OverlappingTouchingEmptyUnsorted_AreJoined()
    {
        var calendar = IntervalCalendar.FromSpans(
            [new(50, 60), new(10, 20), new(20, 30), new(55, 70), new(80, 80), new(12, 15)]);

        Assert.Equal([new MinuteSpan(10, 30), new MinuteSpan(50, 70)], calendar.Spans());
    }

    [Theory]
    [InlineData(-1, 5)]
    [InlineData(5, 4)]
    [InlineData(0, IntervalCalendar.MaximumMinute + 1)]
    public void FromSpans_SpanOutsideItsRange_IsRefused(int start, int end) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IntervalCalendar.FromSpans([new MinuteSpan(start, end)]));

    [Fact]
    public void Never_AnyQuestion_IsClosed()
    {
        var never = IntervalCalendar.Never;

        Assert.Equal(0, never.Count);
        Assert.False(never.IsOpen(0));
        Assert.Null(never.NextOpen(0));
        Assert.Null(never.Finish(0, 1));
        Assert.Null(never.LatestStart(100, 1));
        Assert.Equal(0, never.Union(never).Count);
    }

    [Fact]
    public void Always_ToTheLastMinute_HoldsAllWork()
    {
        var always = IntervalCalendar.Always(IntervalCalendar.MaximumMinute);

        Assert.Equal(IntervalCalendar.MaximumMinute, always.TotalWork);
        Assert.Equal(IntervalCalendar.MaximumMinute, always.Finish(0, IntervalCalendar.MaximumMinute));
        Assert.Null(always.Finish(1, IntervalCalendar.MaximumMinute));
        Assert.Null(always.Finish(0, int.MaxValue));
    }

    [Theory]
    [InlineData(0, 100, 200)]
    [InlineData(0, 101, 301)]
    [InlineData(150, 50, 200)]
    [InlineData(150, 51, 301)]
    [InlineData(200, 1, 301)]
    [InlineData(250, 0, 250)]
    [InlineData(300, 100, 400)]
    public void Finish_AtTheEdgesOfSpans_EndsWithTheSpan(int start, int work, int expected) =>
        Assert.Equal(expected, TwoEvenings.Finish(start, work));

    [Fact]
    public void Finish_MoreWorkThanIsLeft_IsNull() => Assert.Null(TwoEvenings.Finish(301, 100));

    [Theory]
    [InlineData(400, 100, 300)]
    [InlineData(400, 101, 199)]
    [InlineData(300, 1, 199)]
    [InlineData(200, 100, 100)]
    [InlineData(250, 0, 250)]
    public void LatestStart_AtTheEdgesOfSpans_IsAnOpenMinute(int finish, int work, int expected) =>
        Assert.Equal(expected, TwoEvenings.LatestStart(finish, work));

    [Fact]
    public void LatestStart_MoreWorkThanCameBefore_IsNull() => Assert.Null(TwoEvenings.LatestStart(199, 100));

    [Fact]
    public void WorkBetween_AcrossAGap_CountsOpenMinutesOnly() => Assert.Equal(75, TwoEvenings.WorkBetween(150, 325));

    [Fact]
    public void NextOpen_InAGapAndAfterTheEnd_IsTheNextSpanOrNull()
    {
        Assert.Equal(300, TwoEvenings.NextOpen(200));
        Assert.Equal(399, TwoEvenings.NextOpen(399));
        Assert.Null(TwoEvenings.NextOpen(400));
    }
}
