namespace EpisodePlanner.Trials.Editing;

/// <summary>What came of many editors of one workshop.</summary>
/// <param name="Editors">How many there were.</param>
/// <param name="Changes">How many of their changes were made.</param>
/// <param name="Retries">How often one had to look again because another was quicker.</param>
/// <param name="CirclesRefused">How many links were refused that would have closed a circle.</param>
/// <param name="Took">How long all of it took.</param>
/// <param name="Slowest">How long the slowest request took.</param>
public sealed record EditorsFigures(
    int Editors, int Changes, int Retries, int CirclesRefused, TimeSpan Took, TimeSpan Slowest);
