using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// From ready to public. 10 h of work from Monday 8 March, 18:00, in evenings of 4 h: ready on Wednesday 10 March at
/// 20:00, 46 h before the slot of Friday 12 March, 18:00. Dates computed by hand.
/// </summary>
public sealed class PublishingTests
{
    [Theory]
    [InlineData(0, 0, "2027-03-12T18:00")]
    [InlineData(5, 40, "2027-03-12T18:00")] // 45 h of 46
    [InlineData(6, 40, "2027-03-19T18:00")] // exactly 46 h: not strictly before
    public void Make_SafetyLeadAndEarlyView_AreKeptStrictly(int lead, int earlyView, string expected)
    {
        var plan = Set($"\"safetyLeadHours\": {lead}, \"earlyViewHours\": {earlyView}");

        Assert.Equal("2027-03-10T20:00", plan.Ready("raft.rest"));
        Assert.Equal(expected, plan.Publish("raft.rest"));
    }

    [Fact]
    public void Make_EpisodesOwnEarlyView_GoesBeforeTheSettings()
    {
        var plan = new Shop
        {
            Settings = """{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 0 }], "earlyViewHours": 100 }""",
            Tasks = Shop.Work("weld", 10),
            Episodes = """{ "id": "one", "title": "One", "series": "raft", "milestones": ["floats"], "earlyViewHours": 24 }""",
        }.Plan();

        Assert.Equal("2027-03-12T18:00", plan.Publish("one"));
    }

    [Theory]
    [InlineData(4, "2027-03-12T18:00")] // 2 h on Wednesday, 2 h on Thursday
    [InlineData(7, "2027-03-19T18:00")] // one of them on Friday, until 19:00
    public void Make_Fixes_EndBeforeThePublicMoment(int hours, string expected)
    {
        var plan = new Shop
        {
            Settings = $$"""{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "checks", "hours": 0 }, { "kind": "fixes", "hours": {{hours}} }], "earlyViewHours": 24 }""",
            Tasks = Shop.Work("weld", 10),
        }.Plan();

        Assert.Equal("2027-03-10T20:00", plan.Ready("raft.rest"));
        Assert.Equal(expected, plan.Publish("raft.rest"));
    }

    [Theory]
    [InlineData(16, "2027-03-12T18:00")] // ready on Thursday: at the opening
    [InlineData(17, "2027-03-12T19:00")] // ready inside the window: at once
    [InlineData(20, "2027-03-19T18:00")] // ready at its end: too late
    public void Make_SlotWithAWindow_TakesItsOpeningOrTheMomentItIsReady(int hours, string expected)
    {
        var plan = new Shop
        {
            Tasks = Shop.Work("weld", hours),
            Slots = """{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR", "windowMinutes": 240 }""",
        }.Plan();

        Assert.Equal(expected, plan.Publish("raft.rest"));
    }

    [Fact]
    public void Make_DayToAvoid_IsLeftOut() =>
        Assert.Equal("2027-03-19T18:00", Set("\"daysToAvoid\": [\"2027-03-12\"]").Publish("raft.rest"));

    [Theory]
    [InlineData(7, "2027-03-12T18:00")] // 5 March to 12 March
    [InlineData(8, "2027-03-19T18:00")]
    public void Make_DaysBetweenUploads_CountFromTheLast(int days, string expected) =>
        Assert.Equal(expected, Set($"\"daysBetweenUploads\": {days}").Publish("raft.rest"));

    [Fact]
    public void Make_SlotOfAnotherSeries_IsNotTaken()
    {
        var plan = new Shop
        {
            Series = """
                { "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] },
                { "id": "other", "name": "Other" }
                """,
            Tasks = Shop.Work("weld", 10),
            Slots = """
                { "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR", "series": ["other"] },
                { "from": "2027-01-03", "at": "10:00", "rule": "FREQ=WEEKLY;BYDAY=SU" }
                """,
        }.Plan();

        Assert.Equal("2027-03-14T10:00", plan.Publish("raft.rest"));
    }

    [Fact]
    public void Make_TwoEpisodesReady_OneASlotInStoryOrder()
    {
        // Both are ready now; the later one shows a later milestone.
        var plan = new Shop
        {
            Series = """{ "id": "raft", "name": "Raft", "milestones": [{ "id": "z", "name": "z" }, { "id": "a", "name": "a" }] }""",
            Episodes = """
                { "id": "late", "title": "Late", "series": "raft", "milestones": ["a"] },
                { "id": "early", "title": "Early", "series": "raft", "milestones": ["z"] }
                """,
        }.Plan();

        Assert.Equal(new LocalDate(2027, 3, 12), plan.Episode("early").Date);
        Assert.Equal(new LocalDate(2027, 3, 19), plan.Episode("late").Date);
    }

    private static Plan Set(string setting) => new Shop
    {
        Settings = $$"""{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 0 }], {{setting}} }""",
        Tasks = Shop.Work("weld", 10),
    }.Plan();
}
