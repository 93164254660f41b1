namespace EpisodePlanner.Scheduling;

/// <summary>A stretch of minutes, from its start (included) to its end (excluded).</summary>
/// <param name="Start">The first minute.</param>
/// <param name="End">The minute after the last.</param>
public readonly record struct MinuteSpan(int Start, int End)
{
    /// <summary>How many minutes it has.</summary>
    public int Length => End - Start;

    /// <summary>Whether a minute lies in it.</summary>
    public bool Contains(int minute) => Start <= minute && minute < End;
}
