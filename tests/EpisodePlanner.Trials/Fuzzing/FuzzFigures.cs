namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>What came of many bad requests.</summary>
/// <param name="Requests">How many there were.</param>
/// <param name="Operations">How many operations they went to.</param>
/// <param name="Statuses">How many answers each status had.</param>
/// <param name="Findings">What must not be, once for each operation, with the request; empty where all is well.</param>
/// <param name="NeverDone">Operations none of whose requests came out well.</param>
public sealed record FuzzFigures(
    int Requests,
    int Operations,
    IReadOnlyDictionary<int, int> Statuses,
    IReadOnlyList<string> Findings,
    IReadOnlyList<string> NeverDone);
