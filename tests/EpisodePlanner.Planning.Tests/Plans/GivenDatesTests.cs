using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Dates given to others. 10 h of work from Monday 8 March, 18:00, in evenings of 4 h: done on Wednesday 10 March at
/// 20:00, out on Friday 12 March at 18:00. Lateness computed by hand.
/// </summary>
public sealed class GivenDatesTests
{
    private const string One = """{ "id": "one", "title": "One", "series": "raft", "milestones": ["floats"] }""";

    [Fact]
    public void Make_ToldForItsDay_IsNotLate()
    {
        var plan = Told("2027-03-12");

        Assert.Equal(0, plan.Weights.LateMinutes);
        Assert.DoesNotContain(plan.Findings, f => f.Kind == FindingKind.Missed);
    }

    [Fact]
    public void Make_ToldForADayBefore_IsLateFromThatDaysEnd()
    {
        // Thursday 11 March ends 18 h before the slot; the day's last minute counts as kept.
        var plan = Told("2027-03-11");

        Assert.Equal((18 * 60) + 1, plan.Weights.LateMinutes);
        Assert.Equal("$.episodes['one']", Assert.Single(plan.Findings, f => f.Kind == FindingKind.Missed).Where);
    }

    [Fact]
    public void Make_ToldTwice_LastCounts()
    {
        var later = """, { "id": "later", "episode": "one", "date": "2027-03-12", "toldOn": "2027-03-06", "to": "all" }""";

        Assert.Equal(0, Told("2027-03-11", later).Weights.LateMinutes);
    }

    [Fact]
    public void Make_NeededByItsDay_IsNotLate() => Assert.Equal(0, Needed("2027-03-10").Weights.LateMinutes);

    [Fact]
    public void Make_NeededByADayBefore_IsLateFromThatDaysEnd()
    {
        // Tuesday 9 March ends 20 h before the work does.
        var plan = Needed("2027-03-09");

        Assert.Equal(20 * 60, plan.Weights.LateMinutes);
        Assert.Equal("$.tasks['weld']", Assert.Single(plan.Findings, f => f.Kind == FindingKind.Missed).Where);
    }

    [Fact]
    public void Make_NeededByFirst_GoesBeforeOtherWork()
    {
        // 4 h for the other series, needed by Monday's end, take Monday's evening.
        var plan = new Shop
        {
            Tasks = $$"""{{Shop.Work("weld", 10)}}, { "id": "gift", "name": "gift", "stages": [{ "kind": "attended", "hours": 4 }], "neededBy": "2027-03-08" }""",
        }.Plan();

        Assert.Equal(0, plan.Weights.LateMinutes);
        Assert.Equal("2027-03-08T22:00", plan.Finish("gift"));
    }

    [Fact]
    public void Make_PinnedToALaterSlot_IsHeldBack()
    {
        var plan = Pinned("2027-03-19T18:00");

        Assert.Equal("2027-03-19T18:00", plan.Publish("one"));
        Assert.Equal(0, plan.Weights.LateMinutes);
    }

    [Fact]
    public void Make_PinnedTooEarly_IsLateByTheDaysBetween()
    {
        // 30 h end on Wednesday 17 March; the slot after that is a week later than the pinned one.
        var plan = Pinned("2027-03-12T18:00", 30);

        Assert.Equal("2027-03-19T18:00", plan.Publish("one"));
        Assert.Equal(7 * 1440, plan.Weights.LateMinutes);
        Assert.Contains(plan.Findings, f => f.Kind == FindingKind.Missed && f.Where == "$.episodes['one']");
    }

    [Fact]
    public void Make_PinnedWithoutMilestones_HoldsNobodyUp()
    {
        // A special, ready now, pinned to 26 March; the story's own episode goes out on 12 March.
        var special = """{ "id": "special", "title": "Special", "series": "raft", "pinnedSlot": "2027-03-26T18:00" }""";
        var plan = new Shop { Tasks = Shop.Work("weld", 10), Episodes = $"{One}, {special}" }.Plan();

        Assert.Equal(new LocalDate(2027, 3, 12), plan.Episode("one").Date);
        Assert.Equal(new LocalDate(2027, 3, 26), plan.Episode("special").Date);
    }

    private static Plan Told(string date, string more = "") => new Shop
    {
        Tasks = Shop.Work("weld", 10),
        Episodes = One,
        More = $$""", "toldDates": [{ "episode": "one", "date": "{{date}}", "toldOn": "2027-03-01", "to": "all" }{{more}}]""",
    }.Plan();

    private static Plan Needed(string date) => new Shop { Tasks = Shop.Work("weld", 10, $", \"neededBy\": \"{date}\"") }.Plan();

    private static Plan Pinned(string slot, int hours = 10) => new Shop
    {
        Tasks = Shop.Work("weld", hours),
        Episodes = One.Replace("\"milestones\"", $"\"pinnedSlot\": \"{slot}\", \"milestones\"", StringComparison.Ordinal),
    }.Plan();
}
