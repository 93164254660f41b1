namespace EpisodePlanner.Scheduling.Tests;

/// <summary>Interval calendars against a minute-by-minute oracle, on seeded random spans.</summary>
public sealed class IntervalCalendarOracleTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Questions_AnyMinute_AgreeWithOracle(int seed)
    {
        var spans = RandomSpans(new Dice(seed));
        var (calendar, oracle) = (IntervalCalendar.FromSpans(spans), MinuteOracle.Of(spans));

        for (var minute = -5; minute <= MinuteOracle.Length + 5; minute++)
        {
            Assert.Equal(oracle.IsOpen(minute), calendar.IsOpen(minute));
            Assert.Equal(oracle.NextOpen(minute), calendar.NextOpen(minute));
            Assert.Equal(oracle.WorkBefore(minute), calendar.WorkBefore(minute));
        }

        Assert.Equal(oracle.WorkBefore(MinuteOracle.Length), calendar.TotalWork);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void FinishAndLatestStart_AnyWork_AgreeWithOracle(int seed)
    {
        var spans = RandomSpans(new Dice(seed));
        var (calendar, oracle) = (IntervalCalendar.FromSpans(spans), MinuteOracle.Of(spans));

        for (var minute = 0; minute <= MinuteOracle.Length; minute++)
        {
            for (var work = 0; work <= 40; work += work < 6 ? 1 : 7)
            {
                Assert.Equal(oracle.Finish(minute, work), calendar.Finish(minute, work));
                Assert.Equal(oracle.LatestStart(minute, work), calendar.LatestStart(minute, work));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Finish_LaterStart_IsNeverEarlier(int seed)
    {
        var calendar = IntervalCalendar.FromSpans(RandomSpans(new Dice(seed)));

        for (var work = 0; work <= calendar.TotalWork; work++)
        {
            var finishes = Enumerable.Range(0, MinuteOracle.Length)
                .Select(start => calendar.Finish(start, work) ?? int.MaxValue);
            Assert.Equal(finishes.Order(), finishes);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void LatestStart_OfAFinish_IsItsInverse(int seed)
    {
        var calendar = IntervalCalendar.FromSpans(RandomSpans(new Dice(seed)));

        for (var start = 0; start < MinuteOracle.Length; start++)
        {
            for (var work = 1; calendar.Finish(start, work) is { } finish; work++)
            {
                var latest = calendar.LatestStart(finish, work);
                Assert.NotNull(latest);
                Assert.True(latest >= start);
                Assert.Equal(finish, calendar.Finish(latest.Value, work));
                Assert.NotEqual(finish, calendar.Finish(latest.Value + 1, work));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Algebra_TwoCalendars_AgreesWithOracle(int seed)
    {
        var dice = new Dice(seed);
        var (first, second) = (RandomSpans(dice), RandomSpans(dice));
        var (a, b) = (IntervalCalendar.FromSpans(first), IntervalCalendar.FromSpans(second));
        var (x, y) = (MinuteOracle.Of(first), MinuteOracle.Of(second));

        AssertSame(x.Combine(y, (p, q) => p && q), a.Intersect(b));
        AssertSame(x.Combine(y, (p, q) => p || q), a.Union(b));
        AssertSame(x.Combine(y, (p, q) => p && !q), a.Except(b));
    }

    private static MinuteSpan[] RandomSpans(Dice dice)
    {
        var spans = new MinuteSpan[dice.Between(0, 9)];
        for (var i = 0; i < spans.Length; i++)
        {
            var start = dice.Between(0, MinuteOracle.Length);
            spans[i] = new MinuteSpan(start, dice.Between(start, Math.Min(start + 15, MinuteOracle.Length)));
        }

        return spans;
    }

    private static void AssertSame(MinuteOracle expected, IntervalCalendar actual)
    {
        for (var minute = 0; minute < MinuteOracle.Length; minute++)
        {
            Assert.Equal(expected.IsOpen(minute), actual.IsOpen(minute));
        }

        for (var i = 0; i < actual.Count; i++)
        {
            Assert.True(actual.Starts[i] < actual.Ends[i], "A span is empty.");
            Assert.True(i == 0 || actual.Ends[i - 1] < actual.Starts[i], "Spans touch or overlap.");
        }
    }
}
