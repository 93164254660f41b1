using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Solving;

/// <summary>What the solver has to say about a model whose objective is to be least.</summary>
/// <param name="response">Its answer.</param>
internal sealed class SolverAnswer(CpSolverResponse response)
{
    /// <summary>The bound is a double; whole numbers up to this size are exact in it, and a little noise is taken off.</summary>
    private const double Noise = 1e-4;

    /// <summary>Whether there is an assignment that keeps everything.</summary>
    public bool HasValues => response.Status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;

    /// <summary>Whether it is certain that nothing keeps everything.</summary>
    public bool IsImpossible => response.Status == CpSolverStatus.Infeasible;

    /// <summary>Whether the least value is known.</summary>
    public bool IsOptimal => response.Status == CpSolverStatus.Optimal;

    /// <summary>The least value found; only where <see cref="HasValues"/>.</summary>
    public long Best => (long)Math.Round(response.ObjectiveValue);

    /// <summary>No assignment has a lesser value.</summary>
    public long Bound => IsOptimal ? Best : (long)Math.Ceiling(response.BestObjectiveBound - Noise);

    /// <summary>Work done, in the solver's own measure.</summary>
    public double Work => response.DeterministicTime;

    /// <summary>The value of a variable; only where <see cref="HasValues"/>.</summary>
    public long Value(IntVar variable) => response.Solution[variable.Index];

    /// <summary>Whether a literal is true; only where <see cref="HasValues"/>.</summary>
    public bool IsTrue(BoolVar variable) => response.Solution[variable.Index] != 0;
}
