using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>What a command meets outside: where it writes, and the clock.</summary>
public sealed record Surroundings
{
    /// <summary>Answers go here.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>What is wrong, and how far long work has come, goes here.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Whether a person reads the output as it comes.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Whether lines of the error output can be written over.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether a terminal may be given bold text.</summary>
    public bool WithColour { get; init; } = true;

    /// <summary>The environment variables that may be settings of the server.</summary>
    public IReadOnlyDictionary<string, string> Environment { get; init; } = new Dictionary<string, string>();

    /// <summary>Proves what no plan can do.</summary>
    public required IPlanProver Prover { get; init; }

    /// <summary>Tells the time.</summary>
    public required TimeProvider Clock { get; init; }
}
