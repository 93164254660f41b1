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
    private readonly PlanBench bench = new();

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
        cache.Of(key, within => bench.Run(stop => Make(key, workshop, stop), within)).Get(stop);

    /// <summary>The plan of a workshop that nobody will ask for again.</summary>
    public Task<Plan> Once(Workshop workshop, Instant plannedAt, CancellationToken stop) =>
        Task.Run(() => bench.Run(within => Planner.Make(new PlanRequest(workshop, plannedAt), stop: within), stop), stop);

    /// <summary>This minute.</summary>
    public Instant Minute() => Instant.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds() / 60 * 60);

    /// <inheritdoc/>
    public void Dispose() => bench.Dispose();

    private MadePlan Make(PlanKey key, Workshop workshop, CancellationToken stop)
    {
        var request = new PlanRequest(workshop, key.PlannedAt) { Schedules = key.Schedules, Seed = PlanKey.Seed };
        return new MadePlan(key, Planner.Make(request, stop: stop), bench);
    }
}
