using EpisodePlanner.Proving.Solving;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Proving.Packed;

/// <summary>Says how short a schedule of a plain problem can be at best.</summary>
public static class PackedProver
{
    /// <summary>Raises the bound until it meets the best schedule, within limits.</summary>
    /// <param name="known">A feasible schedule, the better the sooner there is a proof.</param>
    /// <param name="limits">How long to look. Without an end by the clock or by hand the answer is the same every time.</param>
    /// <param name="progress">Told each better bound and end, on a thread of the solver.</param>
    /// <param name="stop">Stops soon; bound and schedule are right whenever it stops.</param>
    /// <returns>A schedule at least as good as the known one, and the bound.</returns>
    public static PackedProof Prove(
        PackedSchedule known, ProofLimits limits, IProgress<ProofProgress>? progress = null, CancellationToken stop = default)
    {
        var model = PackedModel.Of(known.Problem, known.End);
        model.StartFrom(known);
        var answer = SolverRun.Minimize(model.Model, limits, Told.To(progress, model.EndWithoutStations, known.End), stop);
        if (!answer.HasValues)
        {
            return new PackedProof(known, (int)Math.Clamp(answer.Bound, model.EndWithoutStations, known.End));
        }

        var found = PackedSchedule.FromStarts(known.Problem, [.. model.Starts.Select(start => (int)answer.Value(start))]);
        return new PackedProof(found.End < known.End ? found : known, (int)Math.Max(answer.Bound, model.EndWithoutStations));
    }
}
