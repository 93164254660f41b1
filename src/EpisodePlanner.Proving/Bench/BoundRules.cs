namespace EpisodePlanner.Proving.Bench;

/// <summary>Which rules a bound rests on.</summary>
public sealed record BoundRules
{
    /// <summary>All rules but greatest lags, which a plan may break and tells.</summary>
    public static BoundRules Usual { get; } = new();

    /// <summary>Whether only schedules count that keep every greatest lag.</summary>
    public bool KeepsGreatestLags { get; init; }

    /// <summary>Stations of which there are as many as anyone likes; their hours still count.</summary>
    public IReadOnlySet<int> RelaxedStations { get; init; } = new HashSet<int>();
}
