using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Everything a plan depends on. The same request gives the same plan, to the minute.</summary>
/// <param name="Workshop">The workshop, at one version, with the order and the next starts that were accepted.</param>
/// <param name="PlannedAt">The moment of planning; whole minutes count. What was logged or published later is not looked at.</param>
public sealed record PlanRequest(Workshop Workshop, Instant PlannedAt)
{
    /// <summary>How many schedules may be made in search of a better one, 1 or more.</summary>
    public int Schedules { get; init; } = 12;

    /// <summary>The seed of the search.</summary>
    public ulong Seed { get; init; } = 1;
}
