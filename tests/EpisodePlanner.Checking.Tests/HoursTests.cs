using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking.Tests;

public sealed class HoursTests
{
    private const int Last = 60;

    [Fact]
    public void EveryAnswer_AgainstMinutes()
    {
        for (var seed = 0UL; seed < 200; seed++)
        {
            var dice = new Dice(seed);
            var (one, other) = (Draw(dice), Draw(dice));
            var (hours, more) = (Hours.Of(Calendar(one)), Hours.Of(Calendar(other)));
            Same(m => one[m] && other[m], hours.And(more));
            Same(m => one[m] && !other[m], hours.Without(more));
            for (var length = 0; length < 6; length++)
            {
                var span = Math.Max(1, length);
                Same(m => m + 2 + span <= Last && one[(m + 2)..(m + 2 + span)].All(open => open), hours.StartsFor(2, length));
            }

            for (var minute = 0; minute < Last; minute++)
                AssertMoments(one, hours, minute);
        }
    }

    private static void AssertMoments(bool[] open, Hours hours, int minute)
    {
        var next = Enumerable.Range(minute, Last - minute).Where(m => open[m]).ToArray();
        Assert.Equal(next.Length > 0 ? next[0] : null, hours.Next(minute));
        Assert.Equal(minute, hours.After(minute, 0));
        for (var work = 1; work < 10; work++)
        {
            Assert.Equal(next.Length >= work ? next[work - 1] + 1 : null, hours.After(minute, work));
            var end = Math.Min(Last, minute + work);
            Assert.Equal(open[minute..end].All(o => o), hours.HasAll(minute, end));
        }
    }

    private static void Same(Func<int, bool> expected, Hours hours) =>
        Assert.All(Enumerable.Range(0, Last), m => Assert.Equal(expected(m), hours.HasMinute(m)));

    private static bool[] Draw(Dice dice)
    {
        var often = dice.Between(20, 90);
        return [.. Enumerable.Range(0, Last).Select(_ => dice.Chance(often))];
    }

    private static IntervalCalendar Calendar(bool[] open) => IntervalCalendar.FromSpans(
        Enumerable.Range(0, Last).Where(m => open[m]).Select(m => new MinuteSpan(m, m + 1)));
}
