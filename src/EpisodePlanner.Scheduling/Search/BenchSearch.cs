using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Engine;

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

/// <summary>Looks for a good bench schedule: several rules of priority, then small moves of the best list.</summary>
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
        CancellationToken stop = default)
    {
        var compiled = new CompiledProblem(problem);
        var best = new Incumbent(compiled, objective);
        foreach (var (rule, keys) in PriorityRules.All(compiled, acceptedOrder ?? []))
        {
            best.Offer(rule, keys);
            progress?.Report((double)best.Generated / budget.Schedules);
            if (best.Generated >= budget.Schedules || stop.IsCancellationRequested)
            {
                return best.ToResult();
            }
        }

        var moves = new ListMoves(compiled, budget.Seed);
        while (best.Generated < budget.Schedules && !stop.IsCancellationRequested && moves.TryNext(best.Keys, out var moved))
        {
            best.Offer(best.Rule, moved);
            progress?.Report((double)best.Generated / budget.Schedules);
        }

        return best.ToResult();
    }

    /// <summary>The best so far.</summary>
    private sealed class Incumbent(CompiledProblem compiled, IScheduleObjective objective)
    {
        private readonly SerialGenerator generator = new(compiled);
        private readonly long[] trialRow = new long[objective.Parts];
        private long[]? row;
        private BenchSchedule? schedule;

        public int[] Keys { get; private set; } = [];

        public string Rule { get; private set; } = "";

        public int Generated { get; private set; }

        public void Offer(string rule, int[] keys)
        {
            generator.Generate(keys);
            Generated++;
            objective.Evaluate(generator.Starts, generator.Finishes, trialRow);
            if (row is not null && trialRow.AsSpan().SequenceCompareTo(row) >= 0)
            {
                return;
            }

            (row, schedule) = ([.. trialRow], generator.ToSchedule());
            (Rule, Keys) = (rule, keys);
        }

        public SearchResult ToResult() => new(schedule!, [.. row!], Rule, Generated);
    }
}
