namespace EpisodePlanner.Planning.Tests;

public sealed class SlotWindowsTests
{
    // Monday 8 March 2027, 08:00 in New York is 13:00 UTC.
    private static readonly TimeAxis Axis = Text.Axis("2027-03-08T13:00:00Z", "America/New_York", 21);

    [Fact]
    public void Of_TwoRules_AreSortedByOpeningThenRule()
    {
        SlotRule[] rules = [Rule("b", "FREQ=WEEKLY;BYDAY=FR"), Rule("a", "FREQ=WEEKLY;BYDAY=TU,FR")];

        var windows = SlotWindows.Of(rules, [], Axis);

        Assert.Equal("a a b a a b a a b", string.Join(' ', windows.Select(window => window.Rule)));
        Assert.Equal(windows.OrderBy(window => window.Opening), windows);
    }

    [Fact]
    public void Of_DayToAvoid_IsLeftOut()
    {
        var windows = SlotWindows.Of([Rule("a", "FREQ=WEEKLY;BYDAY=FR")], [Text.Day("2027-03-19")], Axis);

        Assert.Equal(
            [Text.Local("2027-03-12T18:00:00"), Text.Local("2027-03-26T18:00:00")],
            windows.Select(window => window.LocalOpening));
    }

    [Fact]
    public void Of_WindowOpenWhenThePlanBegins_Counts()
    {
        var rule = Rule("a", "FREQ=WEEKLY;BYDAY=SU") with { WindowMinutes = (14 * 60) + 1 };

        var window = SlotWindows.Of([rule], [], Axis)[0];

        Assert.Equal(-14 * 60, window.Opening);
        Assert.Equal(1, window.End);
        Assert.Equal(Text.Local("2027-03-07T18:00:00"), window.LocalOpening);
    }

    [Fact]
    public void Of_WindowThatEndsAsThePlanBegins_DoesNotCount()
    {
        var rule = Rule("a", "FREQ=WEEKLY;BYDAY=SU") with { WindowMinutes = 14 * 60 };

        Assert.True(SlotWindows.Of([rule], [], Axis)[0].Opening > 0);
    }

    [Fact]
    public void Of_MomentAtTheVeryBeginning_Counts()
    {
        var windows = SlotWindows.Of([Rule("a", "FREQ=WEEKLY;BYDAY=MO") with { At = Text.Time("08:00") }], [], Axis);

        Assert.Equal((0, 0), (windows[0].Opening, windows[0].End));
        Assert.Equal(4, windows.Count);
    }

    [Fact]
    public void Of_TimeInTheGap_OpensAnHourLaterOnTheClockAndIsAvoidedByThatDate()
    {
        var rule = Rule("a", "FREQ=DAILY;COUNT=1") with { From = Text.Day("2027-03-14"), At = Text.Time("02:30") };

        var window = Assert.Single(SlotWindows.Of([rule], [], Axis));

        Assert.Equal(Text.Local("2027-03-14T03:30:00"), window.LocalOpening);
        Assert.Equal(window.Opening, Axis.MinuteOf(Text.Local("2027-03-14T02:30:00")));
        Assert.Empty(SlotWindows.Of([rule], [Text.Day("2027-03-14")], Axis));
    }

    [Fact]
    public void Of_HourlyThroughTheGap_GivesEachMomentOnce()
    {
        var rule = Rule("a", "FREQ=HOURLY") with { From = Text.Day("2027-03-14"), At = Text.Time("00:30") };

        var windows = SlotWindows.Of([rule], [], Axis).Take(4).ToList();

        Assert.Equal([60, 60, 60], windows.Zip(windows.Skip(1), (a, b) => b.Opening - a.Opening));
    }

    [Fact]
    public void Of_RuleThatCannotBeRead_IsRefused() =>
        Assert.Throws<FormatException>(() => SlotWindows.Of([Rule("a", "Fridays")], [], Axis));

    [Fact]
    public void Of_ByTheMinuteFromLongAgo_IsCapped()
    {
        var rule = Rule("a", "FREQ=MINUTELY") with { From = Text.Day("1990-01-01") };

        var windows = SlotWindows.Of([rule], [], Axis);

        Assert.Equal(0, windows[0].Opening);
        Assert.InRange(windows.Count, 3_000, Recurrence.MostTaken);
    }

    [Fact]
    public void Admits_SeriesNamedOrNone_AreLetIn()
    {
        var named = SlotWindows.Of([Rule("a", "FREQ=DAILY") with { Series = [new Id("gorse")] }], [], Axis)[0];
        var free = SlotWindows.Of([Rule("a", "FREQ=DAILY")], [], Axis)[0];

        Assert.True(named.Admits(new Id("gorse")));
        Assert.False(named.Admits(new Id("tansy")));
        Assert.True(free.Admits(new Id("tansy")));
    }

    private static SlotRule Rule(string id, string rule) =>
        new() { Id = new Id(id), From = Text.Day("2027-01-01"), At = Text.Time("18:00"), Rule = rule };
}
