namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>What was found for one file.</summary>
/// <param name="Known">The file and what is known of it.</param>
/// <param name="End">The end of the schedule found.</param>
/// <param name="Generated">How many schedules were generated.</param>
/// <param name="Broken">What the independent checker has against the schedule.</param>
internal sealed record PsplibRow(BestKnown Known, int End, int Generated, IReadOnlyList<string> Broken)
{
    /// <summary>How far the end lies above the critical path, in percent.</summary>
    public double AboveCriticalPath => 100.0 * (End - Known.CriticalPath) / Known.CriticalPath;

    /// <summary>How far the end lies above the best known, in percent.</summary>
    public double AboveBestKnown => 100.0 * (End - Known.Best) / Known.Best;
}
