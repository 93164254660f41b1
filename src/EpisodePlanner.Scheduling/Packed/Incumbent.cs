using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>The best schedule so far, and how many were generated of those that the budget allows.</summary>
internal sealed class Incumbent
{
    /// <summary>Progress is told about so often in all.</summary>
    private const int Reports = 1000;

    private readonly PackedProblem problem;
    private readonly IScheduleObjective objective;
    private readonly SearchBudget budget;
    private readonly IProgress<double>? progress;
    private readonly CancellationToken stop;
    // By index of the columns: the index in the problem.
    private readonly int[] outer;
    private readonly int[] starts;
    private readonly int[] finishes;
    private readonly int[] bestStarts;
    private readonly long[] row;
    private readonly long[] bestRow;
    private readonly long[] floor;
    private bool hasAny;
    private bool isAtFloor;

    /// <summary>Nothing yet.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="objective">What is better.</param>
    /// <param name="budget">How many schedules may be generated.</param>
    /// <param name="progress">Told the share of the budget.</param>
    /// <param name="stop">Ends the search.</param>
    public Incumbent(
        PackedProblem problem,
        IScheduleObjective objective,
        SearchBudget budget,
        IProgress<double>? progress,
        CancellationToken stop)
    {
        (this.problem, this.objective) = (problem, objective);
        (this.budget, this.progress, this.stop) = (budget, progress, stop);
        outer = [.. problem.Network.Order];
        (starts, finishes, bestStarts) = (new int[outer.Length], new int[outer.Length], new int[outer.Length]);
        (row, bestRow, floor) = (new long[objective.Parts], new long[objective.Parts], new long[objective.Parts]);
        var times = NetworkTimes.Of(problem.Network);
        objective.Evaluate([.. times.EarlyStart.Select(t => (int)t)], [.. times.EarlyFinish.Select(t => (int)t)], floor);
    }

    /// <summary>How many schedules may be generated.</summary>
    public int Budget => budget.Schedules;

    /// <summary>How many were.</summary>
    public int Generated { get; private set; }

    /// <summary>Whether another schedule may be made: the first always may, and none where nothing can be better.</summary>
    public bool MayGoOn =>
        Generated == 0 || (Generated < budget.Schedules && !isAtFloor && !stop.IsCancellationRequested);

    /// <summary>The row of the schedule offered last.</summary>
    public ReadOnlySpan<long> Row => row;

    /// <summary>One more schedule is being generated, whether it comes to its end or is stopped early.</summary>
    public void Count()
    {
        Generated++;
        if (progress is not null && (Generated == budget.Schedules || Generated % Math.Max(1, budget.Schedules / Reports) == 0))
        {
            progress.Report((double)Generated / budget.Schedules);
        }
    }

    /// <summary>Evaluates a forward schedule and keeps it where it is the best so far.</summary>
    public void Offer(ReadOnlySpan<int> innerStarts, ReadOnlySpan<int> innerFinishes)
    {
        for (var i = 0; i < outer.Length; i++)
        {
            starts[outer[i]] = innerStarts[i];
            finishes[outer[i]] = innerFinishes[i];
        }

        objective.Evaluate(starts, finishes, row);
        if (!hasAny || row.AsSpan().SequenceCompareTo(bestRow) < 0)
        {
            row.CopyTo(bestRow, 0);
            starts.CopyTo(bestStarts, 0);
            hasAny = true;
            isAtFloor = row.AsSpan().SequenceCompareTo(floor) <= 0;
        }
    }

    /// <summary>The best schedule.</summary>
    public PackedSearchResult ToResult() => new(new PackedSchedule(problem, [.. bestStarts]), [.. bestRow], Generated);
}
