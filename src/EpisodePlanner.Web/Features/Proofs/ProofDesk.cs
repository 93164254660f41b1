using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>Proves what no plan can do, one proof at a time: each keeps a processor busy.</summary>
/// <param name="prover">Who proves.</param>
internal sealed class ProofDesk(IPlanProver prover) : IDisposable
{
    private readonly SemaphoreSlim bench = new(1);

    /// <summary>How soon any plan could publish an episode; null where the plan has no such episode.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="episode">The episode.</param>
    /// <param name="seconds">About so long, 1 or more.</param>
    /// <param name="stop">Gives it up.</param>
    public Task<EpisodeProof?> OfEpisode(Plan plan, Id episode, int seconds, CancellationToken stop) =>
        Next(() => PlanProofs.OfEpisode(plan, episode, prover, ProofLimits.OfSeconds(seconds), stop: stop), stop);

    /// <summary>How much better any plan could be; null where a plan leaves something without a date.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="seconds">About so long for each part, 1 or more.</param>
    /// <param name="stop">Gives it up.</param>
    public Task<PlanProof?> OfPlan(Plan plan, int seconds, CancellationToken stop) =>
        Next(() => PlanProofs.OfPlan(plan, prover, ProofLimits.OfSeconds(seconds), stop: stop), stop);

    private async Task<T> Next<T>(Func<T> prove, CancellationToken stop)
    {
        await bench.WaitAsync(stop);
        try
        {
            var proof = await Task.Run(prove, stop);
            stop.ThrowIfCancellationRequested();
            return proof;
        }
        finally
        {
            bench.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => bench.Dispose();
}
