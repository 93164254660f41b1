using System.Text;
using FsCheck.Xunit;

namespace EpisodePlanner.Writing.Tests;

public sealed class MarkdownTextTests
{
    private const string Always = "\\`*_[]{}<>|~^$@";

    [Theory]
    [InlineData(null, "")]
    [InlineData("weld frame, 12 h (M8) at 17:00!", "weld frame, 12 h (M8) at 17:00!")]
    [InlineData("nuts & bolts", "nuts & bolts")]
    [InlineData("# heading", "\\# heading")]
    [InlineData("closing ##", "closing \\#\\#")]
    [InlineData("part #3 fits", "part #3 fits")]
    [InlineData("- item", "\\- item")]
    [InlineData("+ item", "\\+ item")]
    [InlineData("1. item", "1\\. item")]
    [InlineData("12) item", "12\\) item")]
    [InlineData("a. item", "a\\. item")]
    [InlineData("iv. item", "iv\\. item")]
    [InlineData("tel:112", "tel\\:112")]
    [InlineData("1.5 mm", "1\\.5 mm")]
    [InlineData("---", "\\---")]
    [InlineData("> quote", "\\> quote")]
    [InlineData("    code", "code")]
    [InlineData("a\nb\r\n\r\n# c", "a b # c")]
    [InlineData("a\u2028b\0c\td", "a b c d")]
    [InlineData("| cell | cell |", "\\| cell \\| cell \\|")]
    [InlineData("`code` **bold** _em_ ~~gone~~", "\\`code\\` \\*\\*bold\\*\\* \\_em\\_ \\~\\~gone\\~\\~")]
    [InlineData("[here](javascript:alert(1))", "\\[here\\](javascript\\:alert(1))")]
    [InlineData("![x](y)", "\\!\\[x\\](y)")]
    [InlineData("https://example.org", "https\\://example.org")]
    [InlineData("www.example.org", "www\\.example.org")]
    [InlineData("me@example.org", "me\\@example.org")]
    [InlineData("<script>alert(1)</script>", "\\<script\\>alert(1)\\</script\\>")]
    [InlineData("&lt;b&#62; R&D", "\\&lt;b\\&#62; R\\&D")]
    [InlineData("a \\ b", "a \\\\ b")]
    [InlineData("==mark== ++new++", "\\=\\=mark=\\= +\\+new+\\+")]
    [InlineData("{.class} ^up^ $x$", "&#123;.class\\} \\^up\\^ \\$x\\$")]
    [InlineData(":::box :smile:", "\\:\\:\\:box \\:smile:")]
    [InlineData("\"\"cited\"\"", "\"\\\"cited\"\\\"")]
    [InlineData("safe\u202Egnp.exe", "safegnp.exe")]
    public void Escape_Nasty_ShowsAsTyped(string? text, string expected) =>
        Assert.Equal(expected, MarkdownText.Escape(text));

    [Property(MaxTest = 500)]
    public void Escape_AnyText_IsOneLineWithNothingDangerousLeftOpen(string text)
    {
        var escaped = MarkdownText.Escape(text);
        Assert.DoesNotContain(escaped, char.IsControl);
        for (var i = 0; i < escaped.Length; i++)
        {
            if (escaped[i] == '\\')
            {
                i++;
                Assert.True(i < escaped.Length && char.IsAscii(escaped[i]) && !char.IsLetterOrDigit(escaped[i]));
            }
            else
            {
                Assert.DoesNotContain(escaped[i], Always);
            }
        }
    }

    [Property(MaxTest = 500)]
    public void Escape_AnyText_KeepsEveryVisibleCharacter(string text) =>
        Assert.Equal(Visible(text ?? ""), Visible(Unescape(MarkdownText.Escape(text))));

    private static string Unescape(string escaped)
    {
        var text = new StringBuilder();
        escaped = escaped.Replace("&#123;", "{", StringComparison.Ordinal);
        for (var i = 0; i < escaped.Length; i++)
        {
            i += escaped[i] == '\\' ? 1 : 0;
            text.Append(escaped[i]);
        }

        return text.ToString();
    }

    private static string Visible(string text) => string.Concat(text.EnumerateRunes()
        .Where(rune => !Rune.IsWhiteSpace(rune) && !Rune.IsControl(rune))
        .Where(rune => rune.Value is not ((>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069)))
        .Select(rune => rune.ToString()));
}
