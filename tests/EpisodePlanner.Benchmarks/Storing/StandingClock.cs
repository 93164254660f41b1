using EpisodePlanner.Benchmarks.Scale;

namespace EpisodePlanner.Benchmarks.Storing;

/// <summary>The clock of the stores: it stands at the moment from which the workshops are planned.</summary>
internal sealed class StandingClock : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => GeneratedWorkshop.PlannedAt.ToDateTimeOffset();
}
