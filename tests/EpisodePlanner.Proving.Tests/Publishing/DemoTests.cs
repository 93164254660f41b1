using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Tests.Plans;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Publishing;

/// <summary>The demo, a workshop of 120 tasks. Property: no plan is earlier than a bound, and every bound has a reason.</summary>
public sealed class DemoTests
{
    [Fact]
    public void OfEpisode_EveryEpisodeOfTheDemo_IsBoundedByItsPlan()
    {
        var file = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "harbour-shed.json"));
        var plan = Trial.Feasible(new PlanRequest(Trial.Read(file), NodaTime.Instant.FromUtc(2026, 11, 25, 18, 0)));
        var clock = System.Diagnostics.Stopwatch.StartNew();
        foreach (var episode in plan.Episodes)
        {
            clock.Restart();
            var proof = PlanProofs.OfEpisode(
                plan, episode.Id, new PlanProver(), ProofLimits.OfWork(3), stop: TestContext.Current.CancellationToken)!;
            TestContext.Current.TestOutputHelper?.WriteLine($"{episode.Title}: {proof.Date} {episode.Date} {proof.Why} {clock.ElapsedMilliseconds} ms");

            Assert.NotNull(proof.Earliest);
            Assert.True(episode.Publish is null || proof.Earliest <= episode.Publish, episode.Title);
        }
    }
}
