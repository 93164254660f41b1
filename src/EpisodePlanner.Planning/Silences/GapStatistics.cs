namespace EpisodePlanner.Planning;

/// <summary>Two numbers that tell how regular gaps between uploads are.</summary>
/// <param name="Mean">The mean gap, days.</param>
/// <param name="MeanWait">
/// How long a visitor who comes at a random moment waits for the next upload on average, E[X²]/2E[X], days: half the
/// mean where all gaps are alike, more the less regular they are.
/// </param>
public readonly record struct GapStatistics(double Mean, double MeanWait)
{
    /// <summary>The statistics of ended silences; null where there is none. Open ones don't count.</summary>
    public static GapStatistics? Of(IEnumerable<Silence> silences)
    {
        var days = silences.Where(silence => !silence.OpenEnded).Select(silence => (double)silence.Days).ToList();
        return days.Count == 0 ? null : new GapStatistics(days.Average(), days.Sum(x => x * x) / (2 * days.Sum()));
    }
}
