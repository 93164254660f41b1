namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// A second coat four to twenty-four hours after the first. Acceptance answers: the project's scenario 11; the other dates
/// worked out by hand. Planned on Tuesday 9 March 2027, 08:00.
/// </summary>
public sealed class RecoatTests
{
    private const string Tuesday = "2027-03-09T08:00";
    private const string TuesdaysAndThursdays = "\"tuesday\", \"thursday\"";

    [Fact]
    public void Make_TuesdayAndThursday_IsImpossibleAndSaysWhatWouldHelp()
    {
        var plan = Plan(TuesdaysAndThursdays);

        Assert.Null(plan.Stage("second").Start);
        Assert.Equal(("2027-03-09T19:00", "2027-03-09T21:00"), (plan.Start("first"), plan.Finish("first")));
        var told = Assert.Single(plan.Findings, f => f.Kind == FindingKind.Impossible);
        Assert.Equal("$.tasks['second']", told.Where);
        Assert.Equal(
            "“second” can never be done: it must start at least 4 h and at most 24 h after the end of “first”, and no time at "
            + "which it could be done comes so soon after any time for that one; open hours in between, first from Wed 10 Mar 01:00 "
            + "to Wed 10 Mar 21:00, or allow more time. Together these leave it no time, and any one of them could give way: "
            + "that “second” must follow “first” so soon; the hours of Ann.",
            told.Says);
    }

    [Fact]
    public void Make_WednesdayOpen_StartsNoLaterThanNine()
    {
        var plan = Plan("\"tuesday\", \"wednesday\", \"thursday\"");

        Assert.Equal("2027-03-10T19:00", plan.Start("second"));
        Assert.True(string.CompareOrdinal(plan.Start("second"), "2027-03-10T21:00") <= 0);
        Assert.DoesNotContain(plan.Findings, f => f.Kind is FindingKind.Impossible or FindingKind.Missed);
    }

    [Fact]
    public void Make_LaterBothFit_DoesTheFirstCoatLater()
    {
        // Friday is open too: painted on Thursday, the second coat comes on Friday.
        var plan = Plan("\"tuesday\", \"thursday\", \"friday\"");

        Assert.Equal(("2027-03-11T19:00", "2027-03-12T19:00"), (plan.Start("first"), plan.Start("second")));
        var cause = plan.Stage("first").Cause!;
        Assert.Equal(
            (Scheduling.CauseKind.GreatestLag, "“second” must start within 24 h of its end, which it does Fri 12 Mar 19:00"),
            (cause.Kind, cause.Says));
        Assert.Equal(plan.Stage("second").Key, cause.Stage);
        Assert.DoesNotContain(plan.Findings, f => f.Kind is FindingKind.Impossible or FindingKind.Missed);
    }

    [Fact]
    public void Make_FirstCoatIsDone_FollowsAsSoonAsItCanAndIsMissed()
    {
        var log = """{ "at": "2027-03-08T21:00:00Z", "task": "first", "outcome": "done", "minutes": 120 }""";
        var plan = Plan(TuesdaysAndThursdays, log);

        // Done on Monday at 21:00: Tuesday at 19:00 is soon enough, Thursday would not be.
        Assert.Equal("2027-03-09T19:00", plan.Start("second"));
        Assert.DoesNotContain(plan.Findings, f => f.Kind == FindingKind.Missed);
        plan = Plan("\"thursday\"", log);
        Assert.Equal("2027-03-11T19:00", plan.Start("second"));
        var told = Assert.Single(plan.Findings, f => f.Kind == FindingKind.Missed);
        Assert.Equal(
            "“second” must follow “first” within 24 h, but the plan leaves 70 h, and “first” can't come later any more: open hours before.",
            told.Says);
    }

    private static Plan Plan(string days, string log = "") => new Shop
    {
        People = $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": [{{days}}], "from": "19:00", "to": "22:00" }] } }""",
        Tasks = """{ "id": "first", "name": "first", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 2, "unbroken": true }] }, """
            + Shop.Work("second", 1, """, "links": [{ "task": "first", "lagMinutes": 240, "atMostMinutes": 1440 }]"""),
        Log = log,
    }.Plan(Tuesday);
}
