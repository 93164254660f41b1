namespace EpisodePlanner.Checking;

/// <summary>A stretch of minutes in the checker's own arithmetic.</summary>
/// <param name="Start">The first minute.</param>
/// <param name="End">The minute after the last.</param>
public readonly record struct Stretch(int Start, int End);
