namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>A glue-up that goes on filling its place, in a task with a date. Expected moments are counted by hand.</summary>
public sealed class GluedDatesTests
{
    [Fact]
    public void Make_GluedWaitInATaskWithADate_WaitsWithItsWork()
    {
        // Not before Wednesday: glued there from 18:00 to 20:00, then 24 h of cure without a gap.
        var plan = new Shop
        {
            Places = """{ "id": "bench", "name": "Bench", "kind": "bench" }""",
            Tasks = """
                {
                  "id": "hull", "name": "hull", "kind": "glue", "milestone": "floats", "notBefore": "2027-03-10",
                  "stages": [
                    { "id": "glue", "kind": "attended", "hours": 2, "needs": [["bench"]] },
                    { "id": "cure", "kind": "wait", "hours": 24, "needs": [["bench"]] }
                  ]
                }
                """,
        }.Plan();

        Assert.Equal(("2027-03-10T18:00", "2027-03-10T20:00"), (plan.Start("hull", "glue"), plan.Start("hull", "cure")));
        Assert.Equal("2027-03-11T20:00", plan.Finish("hull", "cure"));
    }
}
