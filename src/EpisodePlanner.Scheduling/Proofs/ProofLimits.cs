namespace EpisodePlanner.Scheduling;

/// <summary>How long a proof may be looked for.</summary>
/// <param name="Work">
/// The solver's own measure of work, above 0; about a second each on one core. Where it is used up before
/// <paramref name="Wall"/>, the same question gets the same answer on every run.
/// </param>
/// <param name="Wall">The most time on the clock, above 0; only a guard against a slow machine.</param>
public sealed record ProofLimits(double Work, TimeSpan Wall)
{
    /// <summary>As much work as fits some seconds on a quiet machine, and twice as long on the clock.</summary>
    /// <param name="seconds">Above 0.</param>
    public static ProofLimits OfSeconds(int seconds) => new(seconds, TimeSpan.FromSeconds(2 * seconds));

    /// <summary>Some seconds of work, and ten times as long on the clock.</summary>
    public static ProofLimits OfWork(double work) => new(work, TimeSpan.FromSeconds(10 * work));
}

/// <summary>How far a proof has come.</summary>
/// <param name="Bound">Nothing can be less than this.</param>
/// <param name="Best">The least that was found.</param>
public readonly record struct ProofProgress(long Bound, long Best);
