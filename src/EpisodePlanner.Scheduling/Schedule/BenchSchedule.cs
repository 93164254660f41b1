namespace EpisodePlanner.Scheduling;

/// <summary>What happens in one part of a placed stage.</summary>
public enum PartKind
{
    /// <summary>A stretch of attended work, fixed once placed.</summary>
    Work,

    /// <summary>Loading a machine.</summary>
    Load,

    /// <summary>The machine running.</summary>
    Run,

    /// <summary>Unloading it; a part of no minutes still needs somebody present at its moment.</summary>
    Unload,

    /// <summary>Time passing.</summary>
    Wait,
}

/// <summary>One part of a placed stage, start included, end excluded.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Start">The first minute.</param>
/// <param name="End">The minute after the last; equal to the start where the part takes no time.</param>
/// <param name="Mode">Which of the stage's modes it uses; an unload may use another one with the same machine.</param>
public readonly record struct SchedulePart(PartKind Kind, int Start, int End, int Mode);

/// <summary>
/// When every stage of a problem happens. Attended: work parts in order. Run: load, run directly after it, unload. Wait:
/// one part. Stages for which no moment was found before the horizon are unplaced, and so are those that wait for them.
/// </summary>
public sealed class BenchSchedule
{
    private readonly int[] firstPart;
    private readonly SchedulePart[] parts;

    internal BenchSchedule(BenchProblem problem, int[] firstPart, SchedulePart[] parts, int[] order)
    {
        Problem = problem;
        this.firstPart = firstPart;
        this.parts = parts;
        Order = order;
    }

    /// <summary>A schedule put together from parts, whether right or wrong; a checker decides.</summary>
    /// <param name="problem">The problem it answers.</param>
    /// <param name="parts">The parts of every stage; none for an unplaced one.</param>
    /// <exception cref="ArgumentException">There is not one list of parts for each stage.</exception>
    public static BenchSchedule FromParts(BenchProblem problem, IReadOnlyList<IReadOnlyList<SchedulePart>> parts)
    {
        if (parts.Count != problem.Stages.Count)
        {
            throw new ArgumentException($"{parts.Count} lists of parts for {problem.Stages.Count} stages.", nameof(parts));
        }

        var first = new int[parts.Count + 1];
        for (var i = 0; i < parts.Count; i++)
        {
            first[i + 1] = first[i] + parts[i].Count;
        }

        var order = Enumerable.Range(0, parts.Count).Where(i => parts[i].Count > 0).OrderBy(i => parts[i][0].Start);
        return new BenchSchedule(problem, first, [.. parts.SelectMany(p => p)], [.. order]);
    }

    /// <summary>The problem it answers.</summary>
    public BenchProblem Problem { get; }

    /// <summary>The placed stages in the order in which they were placed.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>Whether a moment was found for a stage.</summary>
    public bool IsPlaced(int stage) => firstPart[stage + 1] > firstPart[stage];

    /// <summary>The parts of a stage, in order; empty where it is unplaced.</summary>
    public ReadOnlySpan<SchedulePart> Parts(int stage) => parts.AsSpan(firstPart[stage], firstPart[stage + 1] - firstPart[stage]);

    /// <summary>When a placed stage starts.</summary>
    public int Start(int stage) => parts[firstPart[stage]].Start;

    /// <summary>When a placed stage is finished.</summary>
    public int Finish(int stage) => parts[firstPart[stage + 1] - 1].End;

    /// <summary>By stage: when it is finished; −1 where it has no place.</summary>
    public int[] Finishes() => [.. Enumerable.Range(0, Problem.Stages.Count).Select(stage => IsPlaced(stage) ? Finish(stage) : -1)];

    /// <summary>The last finish of all placed stages; 0 where there is none.</summary>
    public int End => parts.Length == 0 ? 0 : parts.Max(part => part.End);
}
