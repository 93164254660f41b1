using EpisodePlanner.Proving.Solving;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>What is certain about the finish of some stages.</summary>
/// <param name="Bound">
/// No schedule finishes them all before this minute; <see cref="EarliestDates.Never"/> where none does within the horizon.
/// </param>
/// <param name="Known">When the known schedule finishes them; null where it does not.</param>
public sealed record StageBound(int Bound, int? Known)
{
    /// <summary>Whether no schedule finishes them sooner than the known one.</summary>
    public bool IsOptimal => Bound == Known;
}

/// <summary>Says how soon stages of a bench problem can be finished at best.</summary>
public static class BenchProver
{
    /// <summary>The bound that there is where nothing can be finished at all.</summary>
    public const int Never = EarliestDates.Never;

    /// <summary>Raises the bound of the last finish of some stages until it meets the known schedule, within limits.</summary>
    /// <param name="known">A feasible schedule.</param>
    /// <param name="targets">The stages, one at least.</param>
    /// <param name="limits">How long to look.</param>
    /// <param name="rules">What the bound rests on.</param>
    /// <param name="progress">Told each better bound, on a thread of the solver.</param>
    /// <param name="stop">Stops soon; the bound is right whenever it stops.</param>
    public static StageBound LeastFinish(
        BenchSchedule known,
        IReadOnlyCollection<int> targets,
        ProofLimits limits,
        BoundRules? rules = null,
        IProgress<ProofProgress>? progress = null,
        CancellationToken stop = default)
    {
        int? reached = targets.All(known.IsPlaced) ? targets.Max(known.Finish) : null;
        var bench = new BenchModel(known.Problem, targets, reached ?? known.Problem.Horizon, rules ?? BoundRules.Usual);
        if (bench.IsImpossible)
        {
            return Impossible(reached);
        }

        var floor = targets.Max(target => bench.Earliest.Finishes[target]);
        var end = bench.Model.NewIntVar(floor, bench.Limit, "end");
        foreach (var target in targets)
        {
            bench.Model.Add(end >= bench[target].Finish);
        }

        bench.EndAfter(end, targets);
        bench.Model.Minimize(end);
        var answer = SolverRun.Minimize(bench.Model, limits, Told.To(progress, floor, reached ?? known.Problem.Horizon), stop);
        return answer.IsImpossible
            ? Impossible(reached)
            : new StageBound(Math.Max((int)Math.Min(answer.Bound, bench.Limit), floor), reached);
    }

    private static StageBound Impossible(int? reached) => reached is null
        ? new StageBound(Never, null)
        : throw new InvalidOperationException("The known schedule breaks a rule, or the relaxation is none.");
}
