using System.Globalization;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>
/// Reads single-mode <c>.sm</c> files of PSPLIB: Kolisch and Sprecher, "PSPLIB – A project scheduling problem library",
/// EJOR 96 (1996). Sections are found by their titles; figures stand in columns separated by spaces.
/// </summary>
internal static class SmFile
{
    /// <summary>The problem in a file.</summary>
    /// <exception cref="InvalidDataException">The text is no such file, or its problem is refused.</exception>
    public static PackedProblem Read(string path)
    {
        var lines = File.ReadAllLines(path);
        var capacities = Rows(lines, "RESOURCEAVAILABILITIES").Single();
        var requests = Rows(lines, "REQUESTS/DURATIONS").ToList();
        var successors = Rows(lines, "PRECEDENCE RELATIONS").ToList();
        if (successors.Count != requests.Count || requests.Any(row => row.Length != 3 + capacities.Length || row[1] != 1))
        {
            throw new InvalidDataException($"{path} is not a single-mode file with one row for each job.");
        }

        return Problem(path, capacities, requests, successors);
    }

    private static PackedProblem Problem(string path, int[] capacities, List<int[]> requests, List<int[]> successors)
    {
        // Columns: job, mode, duration, a demand for each resource; and job, modes, number of successors, successors.
        var made = ActivityNetwork.TryCreate(
            requests.Select(row => new NetworkActivity($"job {row[0]}", row[2])),
            successors.SelectMany(row => row[3..].Select(to => new NetworkLink(row[0] - 1, to - 1, LinkKind.After))),
            out var network,
            out var refusals);
        if (!made)
        {
            throw new InvalidDataException($"{path}: {string.Join(' ', refusals.Select(refusal => refusal.Sentence))}");
        }

        var input = new PackedInput
        {
            Network = network!,
            Stations = [.. capacities.Select((capacity, i) => new PackedStation($"R{i + 1}", capacity))],
            Demands = [.. requests.Select(row => row[3..])],
        };
        return PackedProblem.Create(input) switch
        {
            PackedProblemResult.Sound sound => sound.Problem,
            PackedProblemResult.Refused refused => throw new InvalidDataException($"{path}: {string.Join(' ', refused.Reasons)}"),
            _ => throw new InvalidDataException(path),
        };
    }

    /// <summary>The rows of figures below a title, up to the line of stars that ends its section.</summary>
    private static IEnumerable<int[]> Rows(string[] lines, string title) => lines
        .SkipWhile(line => !line.StartsWith(title, StringComparison.Ordinal))
        .Skip(1)
        .TakeWhile(line => !line.StartsWith('*'))
        .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .Where(words => words.Length > 0 && words.All(word => word.All(char.IsAsciiDigit)))
        .Select(words => words.Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray());
}
