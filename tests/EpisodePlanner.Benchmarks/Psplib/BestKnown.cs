using System.Globalization;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>What is known of one file.</summary>
/// <param name="File">Its name in the folder.</param>
/// <param name="CriticalPath">The length of its critical path without stations.</param>
/// <param name="Best">The least end known.</param>
internal sealed record BestKnown(string File, int CriticalPath, int Best)
{
    /// <summary>Reads a table with the columns <c>file,cp_lb,best_lb,best_ub,status</c>.</summary>
    /// <exception cref="InvalidDataException">It is another table.</exception>
    public static IReadOnlyList<BestKnown> Read(string path)
    {
        var lines = System.IO.File.ReadAllLines(path);
        if (lines.Length == 0 || lines[0] != "file,cp_lb,best_lb,best_ub,status")
        {
            throw new InvalidDataException($"{path} does not begin with 'file,cp_lb,best_lb,best_ub,status'.");
        }

        return [.. lines.Skip(1).Where(line => line.Length > 0).Select(Row)];
    }

    private static BestKnown Row(string line)
    {
        var cells = line.Split(',');
        return new BestKnown(cells[0], Number(cells[1]), Number(cells[3]));
    }

    private static int Number(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);
}
