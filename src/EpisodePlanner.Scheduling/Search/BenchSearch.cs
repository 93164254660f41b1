using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Lists;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling;

/// <summary>How long to look for a better schedule. The same problem, budget and seed give the same schedule.</summary>
/// <param name="Schedules">How many schedules may be generated, at least 1.</param>
/// <param name="Seed">The seed of the random moves once the rules are used up.</param>
public sealed record SearchBudget(int Schedules, ulong Seed = 1);

/// <summary>The best schedule found.</summary>
/// <param name="Schedule">The schedule.</param>
/// <param name="Row">Its row of the objective.</param>
/// <param name="Rule">The rule that made it, in words.</param>
/// <param name="Generated">How many schedules were generated.</param>
public sealed record SearchResult(BenchSchedule Schedule, ImmutableArray<long> Row, string Rule, int Generated);

/// <summary>
/// Looks for a good bench schedule: several rules of priority, then small moves of the best order of targets, then a
/// population whose members are crossed while these moves go on. A search with a larger budget goes on where one with a
/// smaller budget ended.
/// </summary>
public static class BenchSearch
{
    /// <summary>Looks until the budget is used up or it is told to stop; what it has by then is valid.</summary>
    /// <param name="problem">What to schedule.</param>
    /// <param name="objective">What is better.</param>
    /// <param name="budget">How long to look.</param>
    /// <param name="acceptedOrder">Stages in the order the maker accepted, tried first; empty for none.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Stops the search; one schedule is always made.</param>
    public static SearchResult Run(
        BenchProblem problem,
        IScheduleObjective objective,
        SearchBudget budget,
        IReadOnlyList<int>? acceptedOrder = null,
        IProgress<double>? progress = null,
        CancellationToken stop = default) =>
        Run(WorkshopNetwork.Of(problem), objective, budget, acceptedOrder, progress, stop);

    /// <summary>The same, where the problem's network is known already.</summary>
    /// <inheritdoc cref="Run(BenchProblem, IScheduleObjective, SearchBudget, IReadOnlyList{int}, IProgress{double}, CancellationToken)"/>
    public static SearchResult Run(
        WorkshopNetwork network,
        IScheduleObjective objective,
        SearchBudget budget,
        IReadOnlyList<int>? acceptedOrder = null,
        IProgress<double>? progress = null,
        CancellationToken stop = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(budget.Schedules, 1);
        var dice = new SplitMix(~budget.Seed);
        var count = new BenchCount(budget.Schedules, progress, stop);
        var kernel = new BenchKernel(network, objective, count, budget.Seed, acceptedOrder, dice);
        var (durations, use) = BenchUse.Of(network.Passes.Compiled);
        new PopulationSearch(kernel, new WindowCrossover(durations, use, dice), new ListMutation(kernel.Count, null, dice), dice).Run();
        return kernel.ToResult();
    }
}
