using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Nobody is there before Friday. Acceptance answers: the first half of the project's scenario 8.</summary>
public sealed class EveryoneAwayTests
{
    [Fact]
    public void Make_EveryoneAwayBeforeFriday_NamesTheFirstSlotThatCanHold()
    {
        // Back on Saturday: 4 h on Monday evening, so the next Friday.
        var plan = Trial.Plan(File, "2027-03-08T08:00");

        Assert.Equal("2027-03-15T18:00", plan.Start("weld"));
        Assert.Equal("2027-03-19T18:00", plan.Publish("raft.rest"));
    }

    [Fact]
    public void Make_EveryoneAwayBeforeFriday_HoursAreTheCause()
    {
        var plan = Trial.Plan(File, "2027-03-08T08:00");

        Assert.Equal(CauseKind.ClosedHours, plan.Episode("raft.rest").Chain[^1].Cause.Kind);
        Assert.Equal(new Id("maker"), plan.Stage("weld").Cause!.Station);
    }

    private const string File = $$"""
        {
          "format": 1, "name": "Away", "zone": "Etc/UTC",
          "settings": { "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 0 }] },
          "people": [
            {
              "id": "maker", "name": "Maker",
              "hours": {
                "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }],
                "dated": [{ "kind": "closed", "on": "2027-03-08", "through": "2027-03-12" }]
              }
            }
          ],
          "series": [{ "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] }],
          "tasks": [{ "id": "weld", "name": "weld", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 4 }] }],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "series": "raft", "date": "2027-03-05" }]
        }
        """;
}
