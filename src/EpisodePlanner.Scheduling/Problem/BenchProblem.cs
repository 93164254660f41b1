namespace EpisodePlanner.Scheduling;

/// <summary>
/// What there is to schedule on one bench: stations, the stages that need them and the links between these. Immutable
/// and sound: every index is in range, no circle of links, no number too large.
/// </summary>
public sealed class BenchProblem
{
    internal BenchProblem(BenchInput input, StageGraph graph)
    {
        Horizon = input.Horizon;
        Presence = input.Presence;
        Stations = [.. input.Stations];
        Limits = [.. input.Limits];
        Stages = [.. input.Stages];
        Links = [.. input.Links];
        Graph = graph;
    }

    /// <summary>The minute at which planning ends; every calendar ends there or before.</summary>
    public int Horizon { get; }

    /// <summary>When somebody is present.</summary>
    public IntervalCalendar Presence { get; }

    /// <summary>The stations.</summary>
    public IReadOnlyList<Station> Stations { get; }

    /// <summary>The limits that modes refer to.</summary>
    public IReadOnlyList<HoursLimit> Limits { get; }

    /// <summary>The stages. Their order breaks ties.</summary>
    public IReadOnlyList<BenchStage> Stages { get; }

    /// <summary>The links.</summary>
    public IReadOnlyList<BenchLink> Links { get; }

    /// <summary>Links by stage, and an order in which every stage follows those it waits for.</summary>
    internal StageGraph Graph { get; }

    /// <summary>A sound problem, or every reason why the input is none.</summary>
    public static BenchProblemResult Create(BenchInput input)
    {
        var reasons = BenchRules.Check(input);
        if (reasons.Count > 0)
        {
            return new BenchProblemResult.Refused(reasons);
        }

        var graph = StageGraph.Create(input.Stages.Count, input.Links);
        return graph.Circle is { Count: > 0 } circle
            ? new BenchProblemResult.Refused([BenchRules.CircleReason(input, circle)])
            : new BenchProblemResult.Sound(new BenchProblem(input, graph));
    }
}

/// <summary>The parts of a <see cref="BenchProblem"/>, not yet looked at.</summary>
public sealed record BenchInput
{
    /// <summary>The minute at which planning ends, 1 to <see cref="IntervalCalendar.MaximumMinute"/>.</summary>
    public required int Horizon { get; init; }

    /// <summary>When somebody is present.</summary>
    public required IntervalCalendar Presence { get; init; }

    /// <summary>The stations.</summary>
    public IReadOnlyList<Station> Stations { get; init; } = [];

    /// <summary>The limits that modes refer to.</summary>
    public IReadOnlyList<HoursLimit> Limits { get; init; } = [];

    /// <summary>The stages.</summary>
    public IReadOnlyList<BenchStage> Stages { get; init; } = [];

    /// <summary>The links.</summary>
    public IReadOnlyList<BenchLink> Links { get; init; } = [];
}

/// <summary>What came of making a problem.</summary>
public abstract record BenchProblemResult
{
    private BenchProblemResult()
    {
    }

    /// <summary>The problem is sound.</summary>
    public sealed record Sound(BenchProblem Problem) : BenchProblemResult;

    /// <summary>The input is no problem, for these reasons, a sentence each.</summary>
    public sealed record Refused(IReadOnlyList<string> Reasons) : BenchProblemResult;
}
