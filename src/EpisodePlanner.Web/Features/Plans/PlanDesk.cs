using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Makes the plans that are served, and keeps those asked for last.</summary>
/// <param name="store">Where workshops are.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class PlanDesk(WorkshopStore store, TimeProvider clock) : IDisposable
{
    private const int MostKept = 24;
    private const int MostMoves = 3;

    private readonly PlanCache cache = new(MostKept);
    private readonly SemaphoreSlim benches = new(Environment.ProcessorCount);

    /// <summary>
    /// The plan of a workshop as it is now. Where a start or a slot of the plan has passed, or the day has, the moment of
    /// planning is moved on and kept first.
    /// </summary>
    public async Task<MadePlan> Current(Snapshot now, int schedules, CancellationToken stop)
    {
        for (var moves = 0; ; moves++)
        {
            var made = await Of(PlanKey.Of(now, schedules), now.Workshop, stop);
            var minute = Minute();
            if (minute < made.Until || moves == MostMoves
                || await store.MovePlannedAt(now.Id, now.Version, minute, stop) is not { } moved)
            {
                return made;
            }

            now = moved;
        }
    }

    /// <summary>The plan of a workshop that may not be stored.</summary>
    /// <param name="key">What the plan depends on.</param>
    /// <param name="workshop">The workshop of the key.</param>
    /// <param name="stop">Ends the waiting.</param>
    public Task<MadePlan> Of(PlanKey key, Workshop workshop, CancellationToken stop) =>
        cache.Of(key, within => AtBench(() => Make(key, workshop, within), within)).Get(stop);

    /// <summary>The plan of a workshop that nobody will ask for again.</summary>
    public Task<Plan> Once(Workshop workshop, Instant plannedAt, CancellationToken stop) =>
        Task.Run(() => AtBench(() => Made(new PlanRequest(workshop, plannedAt), stop), stop), stop);

    /// <summary>This minute.</summary>
    public Instant Minute() => Instant.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds() / 60 * 60);

    /// <inheritdoc/>
    public void Dispose() => benches.Dispose();

    private MadePlan Make(PlanKey key, Workshop workshop, CancellationToken stop)
    {
        var request = new PlanRequest(workshop, key.PlannedAt) { Schedules = key.Schedules, Seed = PlanKey.Seed };
        return new MadePlan(
            key,
            Made(request, stop),
            (plan, trials, within) => AtBench(() => Advice(plan, trials, within), within),
            (plan, episode, within) => AtBench(() => Why(plan, episode, within), within));
    }

    /// <summary>A search that is stopped has a plan, but not the one that the request would have given: it is dropped.</summary>
    private static Plan Made(PlanRequest request, CancellationToken stop)
    {
        var plan = Planner.Make(request, stop: stop);
        stop.ThrowIfCancellationRequested();
        return plan;
    }

    private static PlanAdvice Advice(Plan plan, bool trials, CancellationToken stop)
    {
        var advice = PlanAdvice.Of(plan, trials, stop);
        stop.ThrowIfCancellationRequested();
        return advice;
    }

    private static EpisodeWhy? Why(Plan plan, Id episode, CancellationToken stop)
    {
        var why = EpisodeWhy.Of(plan, episode, stop: stop);
        stop.ThrowIfCancellationRequested();
        return why;
    }

    private async Task<T> AtBench<T>(Func<T> work, CancellationToken stop)
    {
        await benches.WaitAsync(stop);
        try
        {
            return work();
        }
        finally
        {
            benches.Release();
        }
    }
}
