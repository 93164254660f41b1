using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Tests.Plans;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Publishing;

/// <summary>The demo, a workshop of 120 tasks. Property: no plan is earlier than a bound, and every bound has a reason.</summary>
public sealed class DemoTests
{
    [Fact]
    public void OfEpisode_EpisodesOfTheDemo_AreNotBoundedAfterTheirPlan()
    {
        var file = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "harbour-shed.json"));
        var plan = Trial.Feasible(new PlanRequest(Trial.Read(file), NodaTime.Instant.FromUtc(2026, 11, 25, 18, 0)));
        foreach (var episode in plan.Episodes.Where((_, i) => i % 3 == 0))
        {
            var proof = PlanProofs.OfEpisode(
                plan, episode.Id, new PlanProver(), ProofLimits.OfSeconds(1), stop: TestContext.Current.CancellationToken)!;

            Assert.NotNull(proof.Earliest);
            Assert.True(episode.Publish is null || proof.Earliest <= episode.Publish, episode.Title);
        }
    }
}
