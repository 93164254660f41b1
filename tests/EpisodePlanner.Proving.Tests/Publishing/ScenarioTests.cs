using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Tests.Plans;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Proving.Tests.Publishing;

/// <summary>
/// The project's scenarios 2 and 9. Source of the dates: their published answers, each the best there can be for the cuts
/// given; the hours are counted by hand.
/// </summary>
public sealed class ScenarioTests
{
    private const string WheelsOn = """{ "id": "one", "title": "Wheels on", "series": "gorse", "milestones": ["wheels-on"] }""";

    private const string Brakes = """{ "id": "two", "title": "Brakes", "series": "gorse", "milestones": ["brakes"] }""";

    [Theory]
    [InlineData("gorse.rest", "2027-04-07")]
    [InlineData("gorse.rest", "2027-04-13", WheelsOn)]
    [InlineData("one", "2027-03-19", WheelsOn)]
    [InlineData("one", "2027-03-19", WheelsOn, Brakes)]
    [InlineData("two", "2027-04-03", WheelsOn, Brakes)]
    [InlineData("gorse.rest", "2027-04-17", WheelsOn, Brakes)]
    public void OfEpisode_Gorse_ProvesTheDateOfTheScenario(string episode, string date, params string[] cuts) =>
        AssertProved(Trial.Plan(Gorse(cuts), "2027-03-08T08:00"), episode, date);

    [Theory]
    [InlineData("kite.rest", "2027-06-18")]
    [InlineData("cut", "2027-06-11", """{ "id": "cut", "title": "Welded", "series": "kite", "milestones": ["weld"] }""")]
    [InlineData("cut", "2027-05-28", """{ "id": "cut", "title": "What is filmed", "series": "kite" }""")]
    public void OfEpisode_FirstAnswer_ProvesTheDateOfTheScenario(string episode, string date, params string[] cuts) =>
        AssertProved(Trial.Plan(Kite(cuts), "2027-05-10T08:00"), episode, date);

    [Fact]
    public void OfEpisode_Brakes_NeedsMoreHoursThanAreOpen()
    {
        // 20 + 16 + 25 + 16 h; until Friday 2 April 18:00 there are nineteen evenings of 4 h.
        var why = Assert.IsType<ProofReason.Load>(Proof(Trial.Plan(Gorse(WheelsOn, Brakes), "2027-03-08T08:00"), "two").Why);

        Assert.Equal((77 * 60, 76 * 60), (why.NeededMinutes, why.OpenMinutes));
        Assert.Equal([new Id("maker")], why.Stations);
        Assert.Equal(Instant.FromUtc(2027, 4, 2, 17, 59), why.Until);
    }

    [Fact]
    public void OfEpisode_UnknownId_IsNull() => Assert.Null(PlanProofs.OfEpisode(
        Trial.Plan(Kite(), "2027-05-10T08:00"), new Id("none"), new PlanProver(), ProofLimits.OfWork(1), stop: TestContext.Current.CancellationToken));

    private static void AssertProved(Plan plan, string episode, string date)
    {
        var proof = Proof(plan, episode);

        Assert.Equal(date, proof.Date?.ToString("uuuu-MM-dd", null));
        Assert.True(proof.IsReached);
        Assert.Equal(0, proof.OpenDays);
        Assert.Equal(plan.Episode(episode).Publish, proof.Earliest);
    }

    private static EpisodeProof Proof(Plan plan, string episode) => PlanProofs.OfEpisode(
        plan, new Id(episode), new PlanProver(), ProofLimits.OfWork(5), stop: TestContext.Current.CancellationToken)!;

    private static string Gorse(params string[] episodes) => $$"""
        {
          "format": 1, "name": "Gorse", "zone": "Etc/UTC", "settings": {{Trial.Typed(16)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }],
          "series": [
            {
              "id": "gorse", "name": "Gorse", "promise": { "longestSilenceDays": 21 },
              "work": ["wheels on, 20 h", "brakes, 25 h", "rides, 25 h"]
            }
          ],
          "episodes": [{{string.Join(", ", episodes)}}],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }],
          "uploads": [{ "series": "gorse", "date": "2027-03-06" }]
        }
        """;

    private static string Kite(params string[] episodes) => $$"""
        {
          "format": 1, "name": "First answer", "zone": "Etc/UTC", "settings": { "rangeLow": 1, "rangeHigh": 1 },
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": ["tuesday", "thursday"], "from": "19:00", "to": "22:00" }] } }],
          "series": [{ "id": "kite", "name": "Kite", "work": ["weld, 12 h", "wire, 8 h"] }],
          "episodes": [{{string.Join(", ", episodes)}}],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "series": "kite", "date": "2027-05-03" }]
        }
        """;
}
