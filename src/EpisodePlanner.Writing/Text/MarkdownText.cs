using System.Buffers;
using System.Text;

namespace EpisodePlanner.Writing;

/// <summary>Turns text that people typed into Markdown that shows exactly this text and nothing else.</summary>
public static class MarkdownText
{
    private const string Always = "\\`*_[]}<>|~^$@";
    private const string AtTheStart = "#+-=:";

    // A backslash before it does not stop the attribute lists that some readers know; its entity does.
    private const string Brace = "&#123;";

    private static readonly SearchValues<char> RomanNumerals = SearchValues.Create("ivxlcdmIVXLCDM");

    /// <summary>
    /// The text on one line with every character escaped that could begin structure, a link, an entity or HTML, be it
    /// in plain CommonMark or in its common extensions. Line ends and other controls become one space.
    /// </summary>
    public static string Escape(string? text)
    {
        var line = OneLine(text ?? "");
        var escaped = new StringBuilder(line.Length + 8);
        for (var i = 0; i < line.Length; i++)
        {
            escaped.Append(MustEscape(line, i) ? "\\" : "").Append(line[i] == '{' ? Brace : line[i].ToString());
        }

        return escaped.ToString();
    }

    private static bool MustEscape(string line, int i) => line[i] switch
    {
        var c when Always.Contains(c, StringComparison.Ordinal) => true,
        var c when i == 0 && AtTheStart.Contains(c, StringComparison.Ordinal) => true,
        '#' => line.AsSpan(i).TrimEnd('#').IsEmpty,
        '&' => i + 1 < line.Length && (char.IsAsciiLetter(line[i + 1]) || line[i + 1] == '#'),
        '!' => i + 1 < line.Length && line[i + 1] == '[',
        ':' => i + 1 < line.Length && line[i + 1] != ' ' && !IsClock(line[i - 1], line[i + 1]),
        '=' or '+' or '"' => i > 0 && line[i - 1] == line[i],
        '.' => EndsListNumber(line, i) || EndsWww(line, i),
        ')' => EndsListNumber(line, i),
        _ => false,
    };

    private static bool IsClock(char before, char after) => char.IsAsciiDigit(before) && char.IsAsciiDigit(after);

    private static bool EndsListNumber(string line, int i) => i > 0 && line.AsSpan(0, i) is var number
        && (number.IndexOfAnyExceptInRange('0', '9') < 0
            || number.IndexOfAnyExcept(RomanNumerals) < 0
            || (i == 1 && char.IsAsciiLetter(line[0])));

    private static bool EndsWww(string line, int i) =>
        i >= 3 && line.AsSpan(i - 3, 3).Equals("www", StringComparison.OrdinalIgnoreCase);

    private static string OneLine(string text)
    {
        var line = new StringBuilder(text.Length);
        var space = false;
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsSpace(rune))
            {
                space = line.Length > 0;
            }
            else if (!TurnsText(rune))
            {
                line.Append(space ? " " : "").Append(rune.ToString());
                space = false;
            }
        }

        return line.ToString();
    }

    private static bool IsSpace(Rune rune) => Rune.IsWhiteSpace(rune) || Rune.IsControl(rune);

    // Marks that turn the reading direction could make a name show something else than it says.
    private static bool TurnsText(Rune rune) => rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
