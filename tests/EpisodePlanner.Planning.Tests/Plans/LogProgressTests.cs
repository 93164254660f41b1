using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>What is left of work after the log, in evenings of 4 h from Monday 8 March, 18:00. Dates computed by hand.</summary>
public sealed class LogProgressTests
{
    [Fact]
    public void Make_Partly_LeavesTheEstimateLessWhatWasWorked()
    {
        // 10 h − 3 h = 7 h: 4 h on Monday, 3 h on Tuesday.
        var plan = Logged("\"outcome\": \"partly\", \"minutes\": 180");

        Assert.Equal(7 * 60, plan.Stage("weld").Minutes);
        Assert.Equal("2027-03-09T21:00", plan.Finish("weld"));
    }

    [Fact]
    public void Make_PartlyBeyondTheEstimate_LeavesATenth()
    {
        // 10 h estimated, 12 h worked, not done: an hour.
        Assert.Equal("2027-03-08T19:00", Logged("\"outcome\": \"partly\", \"minutes\": 720").Finish("weld"));
    }

    [Fact]
    public void Make_RemainingAsSaid_LeavesThat()
    {
        // 90 minutes remain, whatever the estimate says.
        var plan = Logged("\"outcome\": \"partly\", \"minutes\": 180, \"remainingMinutes\": 90");

        Assert.Equal("2027-03-08T19:30", plan.Finish("weld"));
    }

    [Fact]
    public void Make_PartlyTwice_LeavesTheEstimateLessBoth()
    {
        var plan = Logged(
            "\"outcome\": \"partly\", \"minutes\": 120",
            """{ "id": "earlier", "at": "2027-03-04T21:00:00Z", "task": "weld", "outcome": "partly", "minutes": 60 }""");

        Assert.Equal(7 * 60, plan.Stage("weld").Minutes);
    }

    [Fact]
    public void Make_Failed_StartsAgainFromNothing()
    {
        // 10 h: Monday 4, Tuesday 4, Wednesday 2.
        var plan = Logged(
            "\"outcome\": \"failed\", \"minutes\": 180",
            """{ "id": "earlier", "at": "2027-03-04T21:00:00Z", "task": "weld", "outcome": "partly", "minutes": 60 }""");

        Assert.Equal("2027-03-10T20:00", plan.Finish("weld"));
    }

    [Fact]
    public void Make_Done_IsLeftOut()
    {
        var plan = Logged("\"outcome\": \"done\", \"minutes\": 600");

        Assert.DoesNotContain(plan.Stages, stage => stage.Key.Task == new Id("weld"));
        Assert.Equal("2027-03-12T18:00", plan.Publish("raft.rest"));
    }

    [Fact]
    public void Make_Begun_GoesOnWithWhatIsLeft()
    {
        // Begun Monday 18:00, planned 19:00: 3 h left of 4 h.
        var plan = new Shop
        {
            Tasks = Shop.Work("weld", 4),
            Log = """{ "at": "2027-03-08T18:00:00Z", "task": "weld", "outcome": "begun" }""",
        }.Plan("2027-03-08T19:00");

        Assert.True(plan.Stage("weld").Begun);
        Assert.Equal(("2027-03-08T19:00", "2027-03-08T22:00"), (plan.Start("weld"), plan.Finish("weld")));
    }

    [Fact]
    public void Make_EntryAfterNow_IsNotLookedAt()
    {
        // An entry of the next minute: all 10 h are left.
        var plan = Logged(
            "\"outcome\": \"partly\", \"minutes\": 0",
            """{ "id": "later", "at": "2027-03-08T08:01:00Z", "task": "weld", "outcome": "done", "minutes": 600 }""");

        Assert.Equal(10 * 60, plan.Stage("weld").Minutes);
    }

    [Fact]
    public void Make_PartOfATailIsDone_RestOfItIsLeft()
    {
        // 2 h + 3 h of tail, the first done: 3 h.
        var plan = new Shop
        {
            Settings = """{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "talkToCamera", "hours": 2 }, { "kind": "editPass", "hours": 3 }] }""",
            Episodes = """{ "id": "one", "title": "One", "series": "raft", "milestones": ["floats"] }""",
            Log = """{ "at": "2027-03-05T20:00:00Z", "episode": "one", "part": "talkToCamera", "outcome": "done", "minutes": 120 }""",
        }.Plan();

        Assert.Equal("2027-03-08T21:00", plan.Ready("one"));
        Assert.Equal(3 * 60, plan.Episode("one").WorkMinutes);
    }

    [Fact]
    public void Make_EpisodeIsUploaded_IsNoLongerToCome()
    {
        var plan = new Shop
        {
            Episodes = """{ "id": "one", "title": "One", "series": "raft", "milestones": ["floats"] }""",
            Uploads = """{ "series": "raft", "date": "2027-03-05", "episode": "one" }""",
        }.Plan();

        Assert.Empty(plan.Episodes);
        Assert.Equal(new LocalDate(2027, 3, 5), plan.Outlook("raft").LastUpload);
    }

    private static Plan Logged(string what, string earlier = "") => new Shop
    {
        Tasks = Shop.Work("weld", 10),
        Log = $$"""{ "id": "last", "at": "2027-03-05T21:00:00Z", "task": "weld", {{what}} }{{(earlier.Length > 0 ? ", " : "")}}{{earlier}}""",
    }.Plan();
}
