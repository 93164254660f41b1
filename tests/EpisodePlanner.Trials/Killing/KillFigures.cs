namespace EpisodePlanner.Trials.Killing;

/// <summary>What came of killing the server again and again while it wrote.</summary>
/// <param name="Kills">How often it was killed.</param>
/// <param name="Acknowledged">How many changes and imports it had said yes to; every one was there.</param>
/// <param name="Kept">How many were in flight at a kill and there afterwards, whole.</param>
/// <param name="Lost">How many were in flight at a kill and not there at all.</param>
/// <param name="Version">The version of the workshop in the end: so many changes were replayed.</param>
/// <param name="SlowestStart">How long it took at most until it was ready again.</param>
public sealed record KillFigures(
    int Kills, int Acknowledged, int Kept, int Lost, long Version, TimeSpan SlowestStart);
