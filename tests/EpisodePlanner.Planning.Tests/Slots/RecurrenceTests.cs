using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class RecurrenceTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];

    [Theory]
    [InlineData("")]
    [InlineData("weekly")]
    [InlineData("BYDAY=FR")]
    [InlineData("FREQ=WEEKLY;BYDAY=XX")]
    [InlineData("FREQ=FORTNIGHTLY")]
    [InlineData("FREQ=WEEKLY;INTERVAL=0")]
    [InlineData("FREQ=WEEKLY;COUNT=many")]
    [InlineData("FREQ=WEEKLY;COUNT=2;UNTIL=20270101")]
    [InlineData("FREQ=WEEKLY;UNTIL=banana")]
    [InlineData("FREQ=DAILY;INTERVAL=99999999999")]
    [InlineData("RRULE:FREQ=WEEKLY")]
    [InlineData("FREQ=SECONDLY")]
    [InlineData("FREQ=DAILY;BYSECOND=5")]
    public void TryParse_NotARule_SaysSoInASentence(string text)
    {
        Assert.False(Recurrence.TryParse(text, out _, out var problem));
        Assert.StartsWith($"'{text}' ", problem, StringComparison.Ordinal);
        Assert.EndsWith(".", problem, StringComparison.Ordinal);
        Assert.Equal(problem, Assert.Throws<FormatException>(() => Recurrence.Parse(text)).Message);
    }

    [Theory]
    [InlineData("FREQ=MINUTELY", "1990-01-01T00:00:00")]
    [InlineData("FREQ=MINUTELY;COUNT=100000000", "1990-01-01T00:00:00")]
    [InlineData("FREQ=MINUTELY;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12", "1990-01-01T00:00:00")]
    [InlineData("FREQ=MINUTELY", "0001-01-01T00:00:00")]
    public void Occurrences_ByTheMinuteFromLongAgo_BeginWithThePlanAndAreCapped(string rule, string first)
    {
        var from = Text.Moment("2027-01-10T00:00:00Z");

        var times = Recurrence.Parse(rule)
            .Occurrences(Text.Local(first), Dublin, from, from + Duration.FromDays(3_000)).ToList();

        Assert.Equal(from, times[0].Moment);
        Assert.Equal(from + Duration.FromMinutes(1), times[1].Moment);
        Assert.True(times.Count is > 3_000 and <= Recurrence.MostTaken, $"{times.Count} were taken.");
    }

    /// <summary>Moving DTSTART near the plan must not change what a rule means.</summary>
    [Theory]
    [InlineData("FREQ=WEEKLY;BYDAY=MO,FR,SU")]
    [InlineData("FREQ=WEEKLY;INTERVAL=3;BYDAY=MO,SA;WKST=SU")]
    [InlineData("FREQ=WEEKLY;INTERVAL=2;COUNT=150")]
    [InlineData("FREQ=WEEKLY;BYDAY=TU,TH;COUNT=400")]
    [InlineData("FREQ=DAILY;INTERVAL=11;COUNT=160")]
    [InlineData("FREQ=DAILY;INTERVAL=7;BYMONTH=2,11")]
    [InlineData("FREQ=HOURLY;INTERVAL=35")]
    [InlineData("FREQ=HOURLY;INTERVAL=5;BYDAY=WE;UNTIL=20241201T000000Z")]
    [InlineData("FREQ=MINUTELY;INTERVAL=1234")]
    [InlineData("FREQ=MONTHLY;BYMONTHDAY=31")]
    [InlineData("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29")]
    public void Occurrences_AskedFromLater_AreTheLaterOnes(string rule)
    {
        var first = Text.Local("2020-01-03T10:20:00");
        var (early, middle) = (Text.Moment("2020-01-01T00:00:00Z"), Text.Moment("2023-06-07T10:30:00Z"));
        var end = Text.Moment("2025-01-01T00:00:00Z");
        var recurrence = Recurrence.Parse(rule);

        var all = recurrence.Occurrences(first, Dublin, early, end).ToList();
        var later = recurrence.Occurrences(first, Dublin, middle, end).ToList();

        Assert.NotEmpty(later);
        Assert.NotEqual(all.Count, later.Count);
        Assert.Equal(all.Where(time => time.Moment >= middle), later);
    }

    [Theory]
    [InlineData("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=MINUTELY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=WEEKLY;UNTIL=20200101")]
    [InlineData("FREQ=DAILY;COUNT=5")]
    [InlineData("FREQ=YEARLY;INTERVAL=2000000000")]
    [InlineData("FREQ=WEEKLY;INTERVAL=2147483647")]
    public void Occurrences_NeverInThePlan_AreNone(string rule)
    {
        var from = Text.Moment("2027-01-10T00:00:00Z");

        Assert.Empty(Recurrence.Parse(rule)
            .Occurrences(Text.Local("2019-05-01T18:00:00"), Dublin, from, from + Duration.FromDays(3_000)));
    }

    [Theory]
    [InlineData("FREQ=DAILY;UNTIL=20270112", 3)]
    [InlineData("FREQ=DAILY;UNTIL=20270112T180000", 3)]
    [InlineData("FREQ=DAILY;UNTIL=20270112T175959Z", 2)]
    [InlineData("FREQ=DAILY;UNTIL=20270112T180000Z", 3)]
    public void Occurrences_Until_IncludesItsDayOrMoment(string rule, int expected)
    {
        var from = Text.Moment("2027-01-10T00:00:00Z");

        var times = Recurrence.Parse(rule)
            .Occurrences(Text.Local("2019-05-01T18:00:00"), Dublin, from, from + Duration.FromDays(30));

        Assert.Equal(expected, times.Count());
    }

    [Fact]
    public void Occurrences_OverTheWholeTimeAsked_IncludeTheFirstMomentAndNotTheLast()
    {
        var (from, to) = (Text.Moment("2027-01-10T18:00:00Z"), Text.Moment("2027-01-12T18:00:00Z"));

        var times = Recurrence.Parse("FREQ=DAILY").Occurrences(Text.Local("2027-01-01T18:00:00"), Dublin, from, to);

        Assert.Equal([from, from + Duration.FromDays(1)], times.Select(time => time.Moment));
    }
}
