using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Work that goes on when the plan is made: runs on their machine, waits by themselves. Dates computed by hand.</summary>
public sealed class GoingOnTests
{
    private const string Printer = """{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": true }""";

    [Fact]
    public void Make_PrintIsRunning_MachineIsFreeAfterItsUnload()
    {
        // 10 h from 13:00 end at 23:00; hands come on Tuesday at 18:00; the next print follows the unload of 5 minutes.
        var plan = Running("2027-03-08T14:00");

        Assert.True(plan.Stage("first").Begun);
        Assert.Equal(("2027-03-08T14:00", "2027-03-08T23:00"), Ends(plan, PartKind.Run));
        Assert.Equal(("2027-03-09T18:00", "2027-03-09T18:05"), Ends(plan, PartKind.Unload));
        Assert.Equal("2027-03-09T18:05", plan.Start("second"));
        Assert.Equal(CauseKind.StationHeld, plan.Stage("second").Cause!.Kind);
    }

    [Fact]
    public void Make_PrintIsPastItsEnd_WaitsForItsUnload()
    {
        // Planned on Tuesday at noon, 23 h after the start: nothing of the 10 h is left, the unload is.
        var plan = Running("2027-03-09T12:00");

        Assert.Equal("2027-03-09T18:05", plan.Finish("first"));
        Assert.Equal("2027-03-09T18:05", plan.Start("second"));
    }

    [Fact]
    public void Make_PrintFailed_RunsAgainInFull()
    {
        // Failed at 17:00: 10 h again from 18:00, unloaded on Tuesday.
        var plan = new Shop
        {
            Machines = Printer,
            Tasks = Print("first"),
            Log = """
                { "id": "a", "at": "2027-03-08T13:00:00Z", "task": "first", "outcome": "begun", "station": "printer" },
                { "id": "b", "at": "2027-03-08T17:00:00Z", "task": "first", "outcome": "failed", "minutes": 240 }
                """,
        }.Plan("2027-03-08T17:30");

        Assert.Equal(("2027-03-08T18:00", "2027-03-09T18:05"), (plan.Start("first"), plan.Finish("first")));
    }

    [Fact]
    public void Make_GlueIsOn_CureHasTimeGoneOff()
    {
        // Glued by Sunday 20:00, 24 h of cure, planned on Monday at 08:00: 12 h are left.
        var plan = Cured("""{ "kind": "wait", "hours": 24, "needs": [["bench"]] }""");

        Assert.True(plan.Stage("panel", "2").Begun);
        Assert.Equal(12 * 60, plan.Stage("panel", "2").Minutes);
        Assert.Equal(("2027-03-08T08:00", "2027-03-08T20:00"), (plan.Start("panel", "2"), plan.Finish("panel", "2")));
    }

    [Fact]
    public void Make_GlueIsOn_BenchStaysFilled()
    {
        // The bench is free at 20:00, two hours into the evening.
        Assert.Equal("2027-03-08T20:00", Cured("""{ "kind": "wait", "hours": 24, "needs": [["bench"]] }""").Start("other"));
    }

    [Fact]
    public void Make_WaitIsOver_HasNothingLeft()
    {
        Assert.Equal("2027-03-08T08:00", Cured("""{ "kind": "wait", "hours": 6 }""").Finish("panel", "2"));
    }

    [Fact]
    public void Make_WaitOfBusinessDays_CountsWeekdaysOnly()
    {
        // Two business days from Sunday evening: Monday and Tuesday.
        Assert.Equal("2027-03-10T00:00", Cured("""{ "kind": "wait", "hours": 48, "businessDays": 2 }""").Finish("panel", "2"));
    }

    private static Plan Running(string now) => new Shop
    {
        Machines = Printer,
        Tasks = $"{Print("first")}, {Print("second")}",
        Log = """{ "at": "2027-03-08T13:00:00Z", "task": "first", "outcome": "begun", "station": "printer" }""",
    }.Plan(now);

    private static Plan Cured(string wait) => new Shop
    {
        Places = """{ "id": "bench", "name": "The bench", "kind": "bench" }""",
        Tasks = $$"""
            {
              "id": "panel", "name": "panel", "milestone": "floats",
              "stages": [{ "kind": "attended", "hours": 1, "needs": [["bench"]] }, {{wait}}]
            },
            { "id": "other", "name": "other", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 1, "needs": [["bench"]] }] }
            """,
        Log = """{ "at": "2027-03-07T20:00:00Z", "task": "panel", "stage": "1", "outcome": "done", "minutes": 60 }""",
    }.Plan();

    private static string Print(string id) => $$"""
        {
          "id": "{{id}}", "name": "{{id}}", "milestone": "floats", "mayRunAlone": true,
          "stages": [{ "kind": "run", "hours": 10, "needs": [["printer"]], "unloadMinutes": 5 }]
        }
        """;

    private static (string? Start, string? End) Ends(Plan plan, PartKind kind)
    {
        var part = plan.Stage("first").Parts.Single(p => p.Kind == kind);
        return (plan.Local(part.Start), plan.Local(part.End));
    }
}
