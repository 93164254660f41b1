using NodaTime;
using NodaTime.Calendars;

namespace EpisodePlanner.Planning.Tests;

public sealed class WeekTests
{
    /// <summary>ISO 8601 weeks at the turn of the year, checks §4 [C].</summary>
    [Theory]
    [InlineData("2005-01-01", 2004, 53, IsoDayOfWeek.Saturday)]
    [InlineData("2008-12-29", 2009, 1, IsoDayOfWeek.Monday)]
    [InlineData("2010-01-03", 2009, 53, IsoDayOfWeek.Sunday)]
    [InlineData("2026-12-31", 2026, 53, IsoDayOfWeek.Thursday)]
    public void WeekYear_AtTheTurnOfTheYear_FollowsIso8601(string date, int year, int week, IsoDayOfWeek day)
    {
        var rule = WeekYearRules.Iso;

        Assert.Equal(year, rule.GetWeekYear(Text.Day(date)));
        Assert.Equal(week, rule.GetWeekOfWeekYear(Text.Day(date)));
        Assert.Equal(Text.Day(date), rule.GetLocalDate(year, week, day));
    }
}
