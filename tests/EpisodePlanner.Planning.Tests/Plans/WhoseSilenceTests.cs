using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Whose upload ends whose silence. Acceptance answers: the project's scenario 10.</summary>
public sealed class WhoseSilenceTests
{
    private const string B = """{ "series": "b", "date": "2027-03-10" }""";

    [Fact]
    public void Make_OtherSeriesUploads_AIsStillDue()
    {
        var plan = Trial.Plan(File(B), "2027-03-11T08:00");

        Assert.Equal(new LocalDate(2027, 3, 22), plan.Outlook("a").DueBy);
        Assert.Equal(10, plan.Outlook("a").DaysSilent);
    }

    [Fact]
    public void Make_OtherSeriesUploads_ChannelStartsAnew()
    {
        var plan = Trial.Plan(File(B), "2027-03-11T08:00");

        Assert.Equal((new LocalDate(2027, 3, 10), 1), (plan.Channel.LastUpload, plan.Channel.DaysSilent));
        Assert.Equal(new LocalDate(2027, 3, 31), plan.Channel.DueBy);
        Assert.Equal([new Silence(new(2027, 3, 1), new(2027, 3, 10), 9), new Silence(new(2027, 3, 10), null, 1)], plan.Channel.Past);
    }

    [Fact]
    public void Make_OtherSeriesIsPlanned_EndsTheChannelsSilenceOnly()
    {
        // B is ready at once and takes the slot of Friday 12 March; A's five hours end on Wednesday 31 March.
        var plan = Trial.Plan(File(), "2027-03-11T08:00");

        Assert.Equal([new LocalDate(2027, 3, 12)], plan.Days("b"));
        Assert.Equal([new LocalDate(2027, 4, 2)], plan.Days("a"));
        Assert.Equal(11, Assert.Single(plan.Outlook("a").Alarms).DaysOver);
        Assert.Equal([11, 21], plan.Channel.Forecast.Take(2).Select(s => s.Days));
        Assert.Empty(plan.Channel.Alarms);
    }

    private static string File(string upload = "") => $$"""
        {
          "format": 1, "name": "Two series", "zone": "Etc/UTC", "settings": {{Trial.Typed(0)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": ["wednesday"], "from": "18:00", "to": "20:00" }] } }],
          "series": [
            { "id": "a", "name": "A", "promise": { "longestSilenceDays": 21 }, "work": ["weld, 5 h"] },
            { "id": "b", "name": "B", "promise": { "longestSilenceDays": 60 } }
          ],
          "episodes": [{ "id": "b1", "title": "B one", "series": "b" }],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "series": "a", "date": "2027-03-01" }{{(upload.Length > 0 ? ", " + upload : "")}}]
        }
        """;
}
