using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>The first answer to a few typed lines. Acceptance answers: the project's scenario 9.</summary>
public sealed class FirstAnswerTests
{
    internal const string Now = "2027-05-10T08:00";

    [Fact]
    public void Make_Uncut_IsTwentyFiveDaysOver()
    {
        // 12 h + 8 h + 16 h in evenings of 3 h: the twelfth, Thursday 17 June.
        var plan = Trial.Plan(File(), Now);

        Assert.Equal("2027-06-18T18:00", plan.Local(plan.NextUpload!.Publish));
        var silence = Assert.Single(plan.Outlook("kite").Alarms);
        Assert.Equal((46, 25), (plan.Outlook("kite").Forecast[0].Days, silence.DaysOver));
        Assert.Equal(new LocalDate(2027, 5, 24), silence.Due);
    }

    [Fact]
    public void Make_CutAfterWeld_GoesOutAWeekEarlier()
    {
        // 12 h + 16 h: the tenth evening, Thursday 10 June.
        var plan = Trial.Plan(File("""{ "id": "cut", "title": "Welded", "series": "kite", "milestones": ["weld"] }"""), Now);

        Assert.Equal("2027-06-11T18:00", plan.Publish("cut"));
        Assert.Equal(39, plan.Outlook("kite").Forecast[0].Days);
    }

    [Fact]
    public void Make_LastSlotWithinThePromise_HasTwelveHoursBeforeIt()
    {
        var plan = Trial.Plan(File(), Now);
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, plan.Schedule.Problem.Horizon);
        var slots = SlotWindows.Of(plan.Request.Workshop.SlotRules, [], axis);
        var last = slots.Last(slot => slot.LocalOpening.Date <= plan.Outlook("kite").DueBy);

        Assert.Equal(new LocalDateTime(2027, 5, 21, 18, 0), last.LocalOpening);
        Assert.Equal(12 * 60, plan.Schedule.Problem.Presence.WorkBetween(0, last.Opening));
    }

    internal static string File(string episodes = "") => $$"""
        {
          "format": 1, "name": "First answer", "zone": "Etc/UTC", "settings": { "rangeLow": 1, "rangeHigh": 1 },
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": ["tuesday", "thursday"], "from": "19:00", "to": "22:00" }] } }],
          "series": [{ "id": "kite", "name": "Kite", "work": ["weld, 12 h", "wire, 8 h"] }],
          "episodes": [{{episodes}}],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "series": "kite", "date": "2027-05-03" }]
        }
        """;
}
