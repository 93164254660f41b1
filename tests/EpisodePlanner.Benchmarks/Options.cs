using System.Globalization;

namespace EpisodePlanner.Benchmarks;

/// <summary>Says what is wrong with the command line.</summary>
internal sealed class UsageException(string message) : Exception(message);

/// <summary>What follows an entry's name: pairs of <c>--option value</c>.</summary>
internal sealed class Options
{
    private readonly Dictionary<string, string> values = new(StringComparer.Ordinal);

    public Options(IReadOnlyList<string> arguments)
    {
        for (var i = 0; i < arguments.Count; i += 2)
        {
            if (!arguments[i].StartsWith("--", StringComparison.Ordinal) || i + 1 == arguments.Count)
            {
                throw new UsageException($"'{arguments[i]}' is not an option with a value.");
            }

            values[arguments[i]] = arguments[i + 1];
        }
    }

    /// <summary>A whole number of at least 1, or the default.</summary>
    public int Number(string option, int otherwise) => Numbers(option, [otherwise])[0];

    /// <summary>Whole numbers of at least 1, separated by commas, or the default.</summary>
    public int[] Numbers(string option, int[] otherwise) =>
        values.TryGetValue(option, out var text) ? [.. text.Split(',').Select(part => Parse(option, part))] : otherwise;

    /// <summary>A text, or null.</summary>
    public string? Text(string option) => values.GetValueOrDefault(option);

    /// <summary>Refuses options that the entry does not know.</summary>
    public void Only(params string[] known)
    {
        if (values.Keys.Except(known).FirstOrDefault() is { } unknown)
        {
            throw new UsageException($"There is no option '{unknown}'; there is {string.Join(", ", known)}.");
        }
    }

    private static int Parse(string option, string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
            ? number
            : throw new UsageException($"'{option}' takes whole numbers from 1, not '{text}'.");
}
