using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>When every activity of a plain problem starts.</summary>
public sealed class PackedSchedule
{
    internal PackedSchedule(PackedProblem problem, ImmutableArray<int> starts)
    {
        Problem = problem;
        Starts = starts;
        Finishes = [.. starts.Select((start, activity) => start + (int)problem.Network.Activities[activity].Duration)];
        End = Finishes.IsEmpty ? 0 : Finishes.Max();
    }

    /// <summary>The problem it answers.</summary>
    public PackedProblem Problem { get; }

    /// <summary>By activity, in the unit of the durations; 0 is the earliest.</summary>
    public ImmutableArray<int> Starts { get; }

    /// <summary>By activity: start plus duration, excluded.</summary>
    public ImmutableArray<int> Finishes { get; }

    /// <summary>The last finish; 0 where there is no activity.</summary>
    public int End { get; }

    /// <summary>A schedule put together from starts, whether right or wrong; a checker decides.</summary>
    /// <exception cref="ArgumentException">There is not one start for each activity.</exception>
    /// <exception cref="OverflowException">A finish does not fit 32 bits.</exception>
    public static PackedSchedule FromStarts(PackedProblem problem, IReadOnlyList<int> starts) =>
        starts.Count == problem.Count
            ? new PackedSchedule(problem, [.. starts])
            : throw new ArgumentException($"{starts.Count} starts for {problem.Count} activities.", nameof(starts));
}
