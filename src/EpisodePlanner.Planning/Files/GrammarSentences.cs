using System.Globalization;

namespace EpisodePlanner.Planning.Files;

/// <summary>Says what breaks the grammar of JSON at one place, and what would be right.</summary>
internal static class GrammarSentences
{
    /// <summary>The sentence for the byte at which reading stopped.</summary>
    public static string Of(ReadOnlySpan<byte> bytes, int offset)
    {
        var before = bytes[..offset].TrimEnd(" \t\r\n"u8);
        var says = offset >= bytes.Length ? AtEnd(before) : At(bytes[offset], Previous(before));
        return $"{Syntax.Position(bytes, offset)}: {says}";
    }

    private static char Previous(ReadOnlySpan<byte> before) => before.IsEmpty ? '\0' : (char)before[^1];

    private static string AtEnd(ReadOnlySpan<byte> before) => before.IsEmpty
        ? "the file holds nothing but blanks."
        : "the file ends too early; a quote, a } or a ] is missing.";

    private static string At(byte found, char previous) => (char)found switch
    {
        _ when previous == '\\' => "after a backslash only \" \\ / b f n r t and u with four digits can stand.",
        '/' => "JSON has no comments; take it out, or keep it in a note.",
        ']' or '}' when previous == ',' => "a comma stands before the closing bracket; take it out.",
        ']' or '}' => $"'{(char)found}' closes something that is not open here, or a value is missing before it.",
        '\'' => "texts and names stand in double quotes, not in single ones.",
        '"' or '{' or '[' when IsEndOfValue(previous) => "something is missing before this; most likely a comma.",
        ',' => "a value is missing before this comma.",
        '\n' or '\r' or '\t' => "a text must end on its line; a quote is missing, or write \\n for a new line, \\t for a tab.",
        < ' ' => $"the control character U+{found.ToString("X4", CultureInfo.InvariantCulture)} can't stand here.",
        (>= '0' and <= '9') or '+' or '-' or '.' => "this is no number of JSON; write 0.5 or 12, not .5, +12, 012 or 1.",
        (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') => "this can't stand here; texts and names need double quotes, "
            + "and the only bare words are true, false and null.",
        _ => "this can't stand here; a comma, a colon, a quote or a bracket is wrong or missing.",
    };

    private static bool IsEndOfValue(char previous) =>
        previous is '"' or '}' or ']' || char.IsAsciiLetterOrDigit(previous);
}
