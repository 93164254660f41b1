using System.Globalization;
using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>Understands a line of work: "weld frame, 12 h, after cutting".</summary>
internal static partial class WorkLineParser
{
    private const decimal MostHours = 10_000;
    private const int LongestName = 200;
    private const string Right = "write it as \"weld frame, 12 h\" or \"weld frame, 90 min, after cut tubes\"";

    /// <summary>The line understood, or a sentence about what is wrong with it.</summary>
    public static Parsed<WorkLine?> Parse(string text)
    {
        var parts = text.Split(',', StringSplitOptions.TrimEntries).ToList();
        var after = TakeAfter(parts);
        var name = string.Join(", ", parts.SkipLast(1));
        var length = Length().Match(parts.Count > 0 ? parts[^1] : "");
        if (Problem(text, name, parts, after, length) is { } problem)
        {
            return new(null, problem);
        }

        return TryHours(length, out var hours)
            ? new(new WorkLine(name, hours, after.ToValueList()), null)
            : new(null, $"The length '{parts[^1]}' is out of range; more than 0 and at most "
                + $"{Say.Number(MostHours)} hours are possible.");
    }

    private static string? Problem(string text, string name, List<string> parts, List<string> after, Match length)
    {
        if (!length.Success)
        {
            return $"{Say.Quote(text)} has no length; {Right}.";
        }

        if (length.Groups["unit"].Value.StartsWith("d", StringComparison.OrdinalIgnoreCase))
        {
            return $"'{parts[^1]}' is in days, which say nothing about hours at the bench; {Right}.";
        }

        if (parts.Count > 2 && Digits().IsMatch(parts[^2]))
        {
            return $"'{parts[^2]},{parts[^1]}' has a decimal comma; write a dot, as in \"1.5 h\".";
        }

        return name.Length is 0 or > LongestName ? $"The name of the work must have 1 to {LongestName} characters; {Right}."
            : after.Contains("") ? $"Nothing follows 'after'; {Right}."
            : null;
    }

    private static List<string> TakeAfter(List<string> parts)
    {
        var after = parts.Skip(1).Select(part => After().Match(part)).Where(match => match.Success).ToList();
        parts.RemoveAll(part => parts.IndexOf(part) > 0 && After().IsMatch(part));
        return [.. after.Select(match => match.Groups["name"].Value)];
    }

    private static bool TryHours(Match length, out decimal hours)
    {
        var isNumber = decimal.TryParse(
            length.Groups["number"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out hours);
        if (isNumber && length.Groups["unit"].Value.StartsWith("m", StringComparison.OrdinalIgnoreCase))
        {
            hours /= 60;
        }

        return isNumber && hours > 0 && hours <= MostHours;
    }

    [GeneratedRegex(
        @"^(?<number>[0-9]+(\.[0-9]+)?)\s*(?<unit>h|hrs?|hours?|m|mins?|minutes?|d|days?)\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex Length();

    [GeneratedRegex("^[0-9]+$")]
    private static partial Regex Digits();

    [GeneratedRegex(@"^after(\s+(?<name>.*))?$", RegexOptions.IgnoreCase)]
    private static partial Regex After();
}
