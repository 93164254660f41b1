using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>A rail trolley in twenty-two evenings. Acceptance answers: the project's scenario 2.</summary>
public sealed class GorseTests
{
    private const string Now = "2027-03-08T08:00";

    private const string WheelsOn = """{ "id": "one", "title": "Wheels on", "series": "gorse", "milestones": ["wheels-on"] }""";

    private const string Brakes = """{ "id": "two", "title": "Brakes", "series": "gorse", "milestones": ["brakes"] }""";

    [Fact]
    public void Make_Uncut_IsElevenDaysOver()
    {
        // 70 h + a tail of 16 h in evenings of 4 h: the 22nd, Tuesday 6 April at 20:00; the slot of Wednesday 18:00.
        var plan = Trial.Plan(File(), Now);

        Assert.Equal("2027-04-06T20:00", plan.Ready("gorse.rest"));
        Assert.Equal("2027-04-07T18:00", plan.Publish("gorse.rest"));
        var silence = Assert.Single(plan.Outlook("gorse").Alarms);
        Assert.Equal(new SilenceAhead(new LocalDate(2027, 3, 27), new LocalDate(2027, 4, 7), 11, new Id("gorse.rest")), silence);
        Assert.Equal(32, plan.Outlook("gorse").Forecast[0].Days);
    }

    [Fact]
    public void Make_AnotherSeriesUploads_GorseStaysSilent()
    {
        var other = Trial.Read(File().Replace(
            "\"uploads\": [", """ "uploads": [{ "series": "other", "date": "2027-03-07" }, """, StringComparison.Ordinal));
        var plan = Trial.Plan(other, Now);

        Assert.Equal(new LocalDate(2027, 3, 27), plan.Outlook("gorse").DueBy);
        Assert.Equal(11, Assert.Single(plan.Outlook("gorse").Alarms).DaysOver);
        Assert.Equal(new LocalDate(2027, 3, 7), plan.Channel.LastUpload);
    }

    internal static Plan Uncut() => Trial.Plan(File(), Now);

    internal static Plan CutAtWheelsOn() => Trial.Plan(File(WheelsOn), Now);

    internal static Plan CutAtBoth() => Trial.Plan(File(WheelsOn, Brakes), Now);

    private static string File(params string[] episodes) => $$"""
        {
          "format": 1, "name": "Gorse", "zone": "Etc/UTC", "settings": {{Trial.Typed(16)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }],
          "series": [
            {
              "id": "gorse", "name": "Gorse", "promise": { "longestSilenceDays": 21 },
              "work": ["wheels on, 20 h", "brakes, 25 h", "rides, 25 h"]
            },
            { "id": "other", "name": "Other" }
          ],
          "episodes": [{{string.Join(", ", episodes)}}],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }],
          "uploads": [{ "series": "gorse", "date": "2027-03-06" }]
        }
        """;
}
