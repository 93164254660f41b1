using System.Globalization;
using EpisodePlanner.Proving.Packed;
using EpisodePlanner.Scheduling.Packed;
using Google.OrTools.Sat;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>The solver as anyone would use it: the standard model, its own defaults, no schedule to begin with.</summary>
internal static class SolverAlone
{
    /// <summary>The best schedule it finds in some seconds on so many cores; null for none.</summary>
    public static PackedSchedule? Solve(PackedProblem problem, double seconds, int cores)
    {
        var model = PackedModel.Of(problem, problem.Horizon);
        using var solver = new CpSolver();
        solver.StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:{cores} max_time_in_seconds:{seconds}");
        return solver.Solve(model.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? PackedSchedule.FromStarts(problem, [.. model.Starts.Select(start => (int)solver.Value(start))])
            : null;
    }
}
