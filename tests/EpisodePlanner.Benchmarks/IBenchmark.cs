namespace EpisodePlanner.Benchmarks;

/// <summary>One entry of the program: a question about speed or quality, and the table that answers it.</summary>
internal interface IBenchmark
{
    /// <summary>The word that chooses it.</summary>
    string Name { get; }

    /// <summary>What it measures and what may follow its name, for the usage.</summary>
    string Usage { get; }

    /// <summary>Measures and prints.</summary>
    /// <param name="options">What followed its name.</param>
    /// <param name="page">Where the table goes.</param>
    /// <returns>0 done; 1 where something was measured that must not be.</returns>
    /// <exception cref="UsageException">The options make no sense.</exception>
    int Run(Options options, TextWriter page);
}
