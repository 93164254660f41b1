namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// A water clock: a print looked at once a day, then two days at the bench. Acceptance answers: the project's scenario 1,
/// without its chances.
/// </summary>
public sealed class PrintFirstTests
{
    private const string Monday = "2027-03-08T20:00";

    [Fact]
    public void Make_MayRunAlone_PrintsTonightAndFridayHolds()
    {
        // 20:00 + 14 h = 10:00, looked at there; 16 h at 8 h a day end on Wednesday at 18:00.
        var plan = Trial.Plan(File(alone: true), Monday);

        Assert.Equal(Monday, plan.Start("drum", "print"));
        Assert.Equal("2027-03-09T10:00", plan.Finish("drum", "print"));
        Assert.True(plan.Stage("drum", "print").RunsAlone);
        Assert.Equal("2027-03-10T18:00", plan.Finish("drum", "fit"));
        Assert.Equal("2027-03-12T18:00", plan.Publish("clock.rest"));
    }

    [Fact]
    public void Make_StartedTuesdayEvening_FridayStillHolds()
    {
        var plan = Trial.Plan(File(alone: true), "2027-03-09T20:00");

        Assert.Equal("2027-03-11T18:00", plan.Finish("drum", "fit"));
        Assert.Equal("2027-03-12T18:00", plan.Publish("clock.rest"));
    }

    [Fact]
    public void Make_StartedWednesdayEvening_EndsExactlyAtTheSlotAndMissesIt()
    {
        var plan = Trial.Plan(File(alone: true), "2027-03-10T20:00");

        Assert.Equal("2027-03-12T18:00", plan.Ready("clock.rest"));
        Assert.Equal("2027-03-19T18:00", plan.Publish("clock.rest"));
    }

    [Fact]
    public void Make_MayNotRunAlone_SaysThatItIsImpossibleAndAsks()
    {
        // Presence lasts 12 h 30 min, the print 14 h.
        var plan = Trial.Plan(File(alone: false), Monday);

        Assert.Null(plan.Start("drum", "print"));
        Assert.Null(plan.Publish("clock.rest"));
        var finding = Assert.Single(plan.Findings, f => f.Kind == FindingKind.Impossible);
        Assert.Equal("$.tasks['drum']", finding.Where);
        Assert.Contains("12 h 30 min", finding.Says, StringComparison.Ordinal);
        Assert.Contains("allowed to run alone", finding.Says, StringComparison.Ordinal);
        Assert.Contains("smoke alarm", finding.Says, StringComparison.Ordinal);
    }

    private static string File(bool alone) => $$"""
        {
          "format": 1, "name": "Marl", "zone": "Etc/UTC", "settings": {{Trial.Typed(0)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": {{Trial.EveryDay}}, "from": "08:00", "to": "20:30" }] } }],
          "machines": [{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": {{(alone ? "true" : "false")}} }],
          "places": [{ "id": "bench", "name": "The bench", "kind": "bench", "hours": { "weekly": [{ "days": {{Trial.EveryDay}}, "from": "10:00", "to": "18:00" }] } }],
          "series": [{ "id": "clock", "name": "Clock", "milestones": [{ "id": "ticks", "name": "it ticks" }] }],
          "tasks": [
            {
              "id": "drum", "name": "drum", "milestone": "ticks", "mayRunAlone": true,
              "stages": [
                { "id": "print", "kind": "run", "hours": 14, "needs": [["printer"]], "lookAt": ["10:00"] },
                { "id": "fit", "kind": "attended", "hours": 16, "needs": [["bench"]] }
              ]
            }
          ],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "series": "clock", "date": "2027-03-05" }]
        }
        """;
}
