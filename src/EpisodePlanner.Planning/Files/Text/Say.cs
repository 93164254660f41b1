using System.Globalization;
using System.Text;
using System.Text.Json;

namespace EpisodePlanner.Planning.Files.Text;

/// <summary>Words for sentences about a file.</summary>
internal static class Say
{
    private const int Longest = 60;

    /// <summary>A text in quotes, cut where long, with nothing in it that could disturb a terminal.</summary>
    public static string Quote(string text)
    {
        var shown = new StringBuilder("'");
        foreach (var c in text.AsSpan(0, Math.Min(text.Length, Longest)))
        {
            shown.Append(IsSafe(c) ? c : '?');
        }

        return shown.Append(text.Length > Longest ? "…'" : "'").ToString();
    }

    private static bool IsSafe(char c) =>
        !char.IsControl(c) && !char.IsSurrogate(c) && char.GetUnicodeCategory(c) is not UnicodeCategory.Format;

    /// <summary>A number as people write it: 10,000.</summary>
    public static string Number(decimal number) => number.ToString("#,0.######", CultureInfo.InvariantCulture);

    /// <summary>What a JSON value is, with its article.</summary>
    public static string Kind(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "an array",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True or JsonValueKind.False => "true or false",
        _ => "null",
    };

    /// <summary>Names in a row: a, b, c.</summary>
    public static string Row(IEnumerable<string> names) => string.Join(", ", names);

    /// <summary>The end of a sentence about a mistyped word: "; did you mean 'hours'?", or a full stop.</summary>
    public static string Proposal(string typed, IEnumerable<string> known) =>
        new Nearest().To(typed, known.Order(StringComparer.Ordinal)) is { } near ? $"; did you mean '{near}'?" : ".";
}
