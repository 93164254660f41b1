using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Where an exhaustive search stands: parts are null while undecided, empty where left out.</summary>
internal sealed class SearchState(
    BenchProblem problem, Func<BenchSchedule, long[]> objective, Func<BenchSchedule, long[]>? floor, long limit)
{
    private readonly SchedulePart[]?[] parts = new SchedulePart[]?[problem.Stages.Count];
    private readonly ProblemHours hours = new(problem);
    private BenchSchedule? best;
    private long[] bestVector = [];
    private int bestUnplaced = int.MaxValue;
    private long tried;
    private bool isComplete = true;

    public Surroundings Around() => new(problem, hours, parts, Relaxation.None);

    public void Set(int stage, SchedulePart[]? value) => parts[stage] = value;

    /// <summary>Whether nothing better can come of what stands.</summary>
    public bool IsHopeless(int depth)
    {
        var unplaced = Unplaced();
        isComplete &= tried < limit;
        if (!isComplete || unplaced > bestUnplaced)
            return true;

        return floor is not null && depth > 0 && best is not null && unplaced == bestUnplaced
            && Compare(floor(Schedule()), bestVector) >= 0;
    }

    /// <summary>Looks at a whole schedule.</summary>
    public void LookAt()
    {
        tried++;
        var schedule = Schedule();
        var vector = objective(schedule);
        if (best is null || Unplaced() < bestUnplaced || Compare(vector, bestVector) < 0)
            (best, bestVector, bestUnplaced) = (schedule, vector, Unplaced());
    }

    /// <summary>Whether nothing that a stage waits for is left out.</summary>
    public bool MayPlace(int stage) =>
        (problem.Stages[stage].GluedTo is var host && (host == -1 || parts[host] is { Length: > 0 }))
        && (problem.Stages[stage].Begun || !problem.Links.Any(l => l.To == stage && parts[l.From] is { Length: 0 }));

    /// <summary>Whether nothing that waits for a stage is placed.</summary>
    public bool MayLeaveOut(int stage) =>
        !problem.Links.Any(l => l.From == stage && !problem.Stages[l.To].Begun && parts[l.To] is { Length: > 0 });

    public ExhaustiveResult Result() => new(best, bestUnplaced, bestVector, tried, isComplete);

    private int Unplaced() => parts.Count(p => p is { Length: 0 });

    private BenchSchedule Schedule() => BenchSchedule.FromParts(problem, [.. parts.Select(p => p ?? [])]);

    private static int Compare(long[] left, long[] right) => left.AsSpan().SequenceCompareTo(right);
}
