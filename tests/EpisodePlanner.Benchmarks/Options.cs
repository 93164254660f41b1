using System.Globalization;

namespace EpisodePlanner.Benchmarks;

/// <summary>Says what is wrong with the command line.</summary>
internal sealed class UsageException(string message) : Exception(message);

/// <summary>What follows an entry's name: some words, then pairs of <c>--option value</c>.</summary>
internal sealed class Options
{
    private readonly Dictionary<string, string> values = new(StringComparer.Ordinal);

    public Options(IReadOnlyList<string> arguments)
    {
        Words = [.. arguments.TakeWhile(argument => !IsOption(argument))];
        for (var i = Words.Count; i < arguments.Count; i += 2)
        {
            if (!IsOption(arguments[i]) || i + 1 == arguments.Count)
            {
                throw new UsageException($"'{arguments[i]}' is not an option with a value.");
            }

            values[arguments[i]] = arguments[i + 1];
        }
    }

    /// <summary>What stands before the first option.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>Whether an option is given.</summary>
    public bool Has(string option) => values.ContainsKey(option);

    /// <summary>The text of an option; null where it is left out.</summary>
    public string? Text(string option) => values.GetValueOrDefault(option);

    /// <summary>A whole number of at least 1, or the default.</summary>
    public int Number(string option, int otherwise) => Numbers(option, [otherwise])[0];

    /// <summary>A number above 0, or the default.</summary>
    public double Amount(string option, double otherwise) =>
        !values.TryGetValue(option, out var text) ? otherwise
        : double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount > 0 ? amount
        : throw new UsageException($"'{option}' takes a number above 0, not '{text}'.");

    /// <summary>Whole numbers of at least 1, separated by commas, or the default.</summary>
    public int[] Numbers(string option, int[] otherwise) =>
        values.TryGetValue(option, out var text) ? [.. text.Split(',').Select(part => Parse(option, part))] : otherwise;

    /// <summary>Refuses options that the entry does not know, and words where it takes none.</summary>
    public void Only(params string[] known)
    {
        if (Words.Count > 0)
        {
            throw new UsageException($"'{Words[0]}' is not an option with a value.");
        }

        OnlyOptions(known);
    }

    /// <summary>Refuses options that the entry does not know.</summary>
    public void OnlyOptions(params string[] known)
    {
        if (values.Keys.Except(known).FirstOrDefault() is { } unknown)
        {
            throw new UsageException($"There is no option '{unknown}'; there is {string.Join(", ", known)}.");
        }
    }

    private static bool IsOption(string argument) => argument.StartsWith("--", StringComparison.Ordinal);

    private static int Parse(string option, string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
            ? number
            : throw new UsageException($"'{option}' takes whole numbers from 1, not '{text}'.");
}
