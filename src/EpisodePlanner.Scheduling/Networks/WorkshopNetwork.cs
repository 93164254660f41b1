using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>
/// The network of a bench problem: its links and hours with as many stations as anyone likes. Minutes from the moment of
/// planning, −1 for a stage that can never be done. Greatest lags are kept: a stage that another one must follow soon is
/// done late enough for that. With stations open at all times it agrees with
/// <see cref="NetworkTimes"/>.
/// </summary>
public sealed class WorkshopNetwork
{
    private WorkshopNetwork(CalendarPasses passes)
    {
        Passes = passes;
        Problem = passes.Compiled.Problem;
        EarlyStart = [.. passes.EarlyStart];
        EarlyFinish = [.. passes.EarlyFinish];
        UnkeptLink = [.. passes.Unkept];
        End = EarlyFinish.Length == 0 ? 0 : Math.Max(0, EarlyFinish.Max());
        var (lateStart, lateFinish) = passes.Late([.. Enumerable.Repeat(End, Problem.Stages.Count)]);
        LateStart = [.. lateStart];
        LateFinish = [.. lateFinish];
        FreeFloat = [.. passes.FreeFloat(End)];
        Critical = [.. passes.Critical(End)];
    }

    /// <summary>The problem.</summary>
    public BenchProblem Problem { get; }

    /// <summary>The passes behind it, for whoever needs other latest dates.</summary>
    internal CalendarPasses Passes { get; }

    /// <summary>The last early finish.</summary>
    public int End { get; }

    /// <summary>By stage: the earliest start.</summary>
    public ImmutableArray<int> EarlyStart { get; }

    /// <summary>By stage: the earliest finish.</summary>
    public ImmutableArray<int> EarlyFinish { get; }

    /// <summary>By stage: the latest start that leaves <see cref="End"/> where it is.</summary>
    public ImmutableArray<int> LateStart { get; }

    /// <summary>By stage: the finish that belongs to the latest start.</summary>
    public ImmutableArray<int> LateFinish { get; }

    /// <summary>By stage: how much later its finish may be, elapsed, without moving an early date of another stage or the end.</summary>
    public ImmutableArray<int> FreeFloat { get; }

    /// <summary>By stage: the link whose greatest lag makes it impossible, as no moment keeps it; −1 for none.</summary>
    public ImmutableArray<int> UnkeptLink { get; }

    /// <summary>By stage: whether driving links lead from it to the end.</summary>
    public ImmutableArray<bool> Critical { get; }

    /// <summary>By stage: late start less early start, elapsed minutes.</summary>
    public int TotalFloat(int stage) => LateStart[stage] - EarlyStart[stage];

    /// <summary>Computes the network in O((stages + links) log hours).</summary>
    public static WorkshopNetwork Of(BenchProblem problem) => new(new CalendarPasses(new CompiledProblem(problem)));
}
