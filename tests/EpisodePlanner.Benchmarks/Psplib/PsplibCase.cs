using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>A problem of the library with what is known of it.</summary>
internal sealed record PsplibCase(PackedProblem Problem, BestKnown Known)
{
    /// <summary>The files of a folder that a table names, in the table's order; every so many of them.</summary>
    /// <exception cref="UsageException">A folder or file is missing, or no problem can be read from it.</exception>
    public static IReadOnlyList<PsplibCase> Read(string folder, string table, int every)
    {
        try
        {
            return [.. BestKnown.Read(table)
                .Where((_, i) => i % every == 0)
                .Select(known => new PsplibCase(SmFile.Read(Path.Combine(folder, known.File)), known))];
        }
        catch (Exception problem) when (problem is IOException or InvalidDataException or UnauthorizedAccessException)
        {
            throw new UsageException(problem.Message);
        }
    }
}
