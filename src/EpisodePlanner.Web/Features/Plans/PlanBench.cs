namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Where plans are made: as many at a time as there are processors.</summary>
internal sealed class PlanBench : IDisposable
{
    private readonly SemaphoreSlim benches = new(Environment.ProcessorCount);

    /// <summary>
    /// Makes something once there is a bench for it. What was made until it was stopped is not what was asked for, and is
    /// dropped.
    /// </summary>
    /// <param name="work">Makes it.</param>
    /// <param name="stop">Ends the waiting and the work.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task<T> Run<T>(Func<CancellationToken, T> work, CancellationToken stop)
    {
        await benches.WaitAsync(stop);
        try
        {
            var made = work(stop);
            stop.ThrowIfCancellationRequested();
            return made;
        }
        finally
        {
            benches.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => benches.Dispose();
}
