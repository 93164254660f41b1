using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Engine;
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
        var compiled = network.Passes.Compiled;
        var best = new Incumbent(network.Passes, objective, budget, progress, stop);
        var late = network.Passes.Late([.. network.Problem.Stages.Select(stage => Math.Min(stage.Due, network.Problem.Horizon))]).Start;
        var targets = new Targets(compiled, late);
        if (acceptedOrder is { Count: > 0 })
        {
            best.Offer("the accepted order", PriorityRules.Accepted(compiled, acceptedOrder));
        }

        var byDueDate = targets.ByModifiedDueDate();
        var start = Better(targets, best, byDueDate, targets.FirmFirst(byDueDate));
        foreach (var (rule, keys) in PriorityRules.All(network, late))
        {
            best.Offer(rule, keys);
        }

        Improve(targets, start.Order, start.Row, best, budget.Seed);
        return best.ToResult();
    }

    private const string TargetRule = "what is due first";

    private static (int[] Order, long[]? Row) Better(Targets targets, Incumbent best, int[] left, int[] right)
    {
        var (leftRow, rightRow) = (best.Offer(TargetRule, targets.Keys(left)), best.Offer(TargetRule, targets.Keys(right)));
        return rightRow is not null && rightRow.AsSpan().SequenceCompareTo(leftRow) < 0 ? (right, rightRow) : (left, leftRow);
    }

    /// <summary>Moves targets while the budget lasts; of two orders the better one is moved further.</summary>
    private static void Improve(Targets targets, int[] order, long[]? row, Incumbent best, ulong seed)
    {
        var moves = new TargetMoves(targets, seed);
        while (row is not null && best.MayGoOn && moves.TryNext(order, out var moved))
        {
            if (best.Offer(TargetRule, targets.Keys(moved)) is { } after && after.AsSpan().SequenceCompareTo(row) <= 0)
            {
                (order, row) = (moved, after);
            }
        }
    }

    /// <summary>The best so far, within the budget.</summary>
    private sealed class Incumbent(
        CalendarPasses passes, IScheduleObjective objective, SearchBudget budget, IProgress<double>? progress, CancellationToken stop)
    {
        private readonly SerialGenerator generator = new(passes.Compiled, passes.Unkept);
        private long[]? row;
        private BenchSchedule? schedule;
        private string rule = "";
        private int generated;

        /// <summary>Whether another schedule may be made; the first always may.</summary>
        public bool MayGoOn => generated == 0 || (generated < budget.Schedules && !stop.IsCancellationRequested);

        /// <summary>Makes the schedule of a list and keeps it if it is the best; its row, or null where the budget is used up.</summary>
        public long[]? Offer(string by, int[] keys)
        {
            if (!MayGoOn)
            {
                return null;
            }

            generated += generator.Generate(keys);
            progress?.Report(Math.Min(1, (double)generated / budget.Schedules));

            // What leaves less work without a moment is better, whatever the objective says.
            var trial = new long[1 + objective.Parts];
            trial[0] = generator.Finishes.Count(-1);
            objective.Evaluate(generator.Starts, generator.Finishes, trial.AsSpan(1));
            if (row is null || trial.AsSpan().SequenceCompareTo(row) < 0)
            {
                (row, schedule, rule) = (trial, generator.ToSchedule(), by);
            }

            return trial;
        }

        public SearchResult ToResult() => new(schedule!, [.. row![1..]], rule, generated);
    }
}
