using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Solving;

/// <summary>Tells progress so that bounds only rise and values only fall.</summary>
internal static class Told
{
    /// <summary>What the solver calls; null where nobody listens.</summary>
    public static Action<long?, long?>? To(IProgress<ProofProgress>? progress, long bound, long best) => progress is null
        ? null
        : (newBound, newBest) =>
        {
            (bound, best) = (Math.Max(bound, newBound ?? bound), Math.Min(best, newBest ?? best));
            progress.Report(new ProofProgress(bound, best));
        };
}
