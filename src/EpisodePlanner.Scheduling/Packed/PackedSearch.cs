using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>The best schedule found.</summary>
/// <param name="Schedule">The schedule.</param>
/// <param name="Row">Its row of the objective.</param>
/// <param name="Generated">How many schedules were generated.</param>
public sealed record PackedSearchResult(PackedSchedule Schedule, ImmutableArray<long> Row, int Generated);

/// <summary>
/// Looks for a good schedule of a plain problem: several rules of priority, then a population whose members are crossed.
/// </summary>
/// <remarks>
/// One schedule is one start for every activity, forward or backward: to justify a schedule costs two, and one that is
/// stopped early counts as a whole one (R. Kolisch and S. Hartmann, "Experimental investigation of heuristics for
/// resource-constrained project scheduling: an update", EJOR 174, 2006).
/// </remarks>
public static class PackedSearch
{
    /// <summary>
    /// Looks until the budget is used up, nothing can be better, or it is told to stop; what it has by then is valid. The
    /// same problem, objective, budget and seed give the same schedule on every machine, unless it is told to stop.
    /// </summary>
    /// <param name="problem">What to schedule.</param>
    /// <param name="objective">
    /// What is better. Finishing something later must never make a row less; the row of the earliest dates without
    /// stations is then a floor, and the search ends where it is reached. An <see cref="IDeadlineObjective"/> is faster.
    /// </param>
    /// <param name="budget">
    /// How many schedules may be generated. The search shapes itself to this number up to a million; beyond, it is taken
    /// to run until it is stopped.
    /// </param>
    /// <param name="progress">Told the share of the budget, 0 to 1, a thousand times at most.</param>
    /// <param name="stop">Stops the search within one schedule, by hand or at a time limit; one schedule is always made.</param>
    /// <exception cref="ArgumentOutOfRangeException">The budget is less than one schedule.</exception>
    public static PackedSearchResult Run(
        PackedProblem problem,
        IScheduleObjective objective,
        SearchBudget budget,
        IProgress<double>? progress = null,
        CancellationToken stop = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(budget.Schedules, 1);
        var incumbent = new Incumbent(problem, objective, budget, progress, stop);
        PackedKernel.Search(problem, incumbent, objective, budget.Seed).Run();
        return incumbent.ToResult();
    }
}
