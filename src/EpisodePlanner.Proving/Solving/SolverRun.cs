using System.Globalization;
using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Solving;

/// <summary>Lets the solver work on a model within limits, in a way that gives the same answer every time.</summary>
internal static class SolverRun
{
    /// <summary>Looks for the least value of the model's objective.</summary>
    /// <param name="model">The model.</param>
    /// <param name="limits">How long.</param>
    /// <param name="found">Called on a thread of the solver with each bound, and with the best value where there is one.</param>
    /// <param name="stop">Stops soon; what is known by then is the answer.</param>
    /// <exception cref="InvalidOperationException">The model makes no sense to the solver.</exception>
    public static SolverAnswer Minimize(
        CpModel model, ProofLimits limits, Action<long?, long?>? found = null, CancellationToken stop = default)
    {
        using var solver = new SolveWrapper();
        using var solutions = new Solutions(found);
        using var bounds = new Bounds(found);
        solver.SetStringParameters(Parameters(limits));
        if (found is not null)
        {
            solver.AddSolutionCallback(solutions);
            solver.AddBestBoundCallbackFromClass(bounds);
        }

        using var stopping = stop.Register(solver.StopSearch);
        var response = solver.Solve(model.Model);
        return response.Status == CpSolverStatus.ModelInvalid
            ? throw new InvalidOperationException(model.Validate())
            : new SolverAnswer(response);
    }

    // One worker: with several, who is first depends on the machine.
    private static string Parameters(ProofLimits limits) => string.Create(
        CultureInfo.InvariantCulture,
        $"num_workers:1 random_seed:1 max_deterministic_time:{limits.Work} max_time_in_seconds:{limits.Wall.TotalSeconds}");

    private sealed class Solutions(Action<long?, long?>? found) : SolutionCallback
    {
        public override void OnSolutionCallback() =>
            found?.Invoke((long)Math.Ceiling(BestObjectiveBound() - 1e-4), (long)Math.Round(ObjectiveValue()));
    }

    private sealed class Bounds(Action<long?, long?>? found) : BestBoundCallback
    {
        public override void NewBestBound(double bound) => found?.Invoke((long)Math.Ceiling(bound - 1e-4), null);
    }
}
