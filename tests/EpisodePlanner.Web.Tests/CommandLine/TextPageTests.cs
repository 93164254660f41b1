using EpisodePlanner.Web.CommandLine.Text;
using FsCheck.Xunit;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class TextPageTests
{
    private static string Write(Action<TextPage> write, bool bold = false)
    {
        var output = new StringWriter();
        write(new TextPage(output, bold));
        return output.ToString();
    }

    [Property]
    public void Wrap_AnyText_FitsAndLosesNoWord(string? text, byte extra)
    {
        var width = 10 + (extra % 80);
        var lines = TextPage.Wrap(text ?? "", width).ToList();

        Assert.All(lines, line => Assert.InRange(line.Length, 1, width));
        Assert.Equal(Letters(text ?? ""), Letters(string.Concat(lines)));
    }

    [Fact]
    public void Wrap_LongWord_IsBroken() => Assert.Equal(["aaaa", "aab"], TextPage.Wrap("aaaaaab", 4));

    [Fact]
    public void Wrap_ControlCharacters_DoNotReachTheTerminal() =>
        Assert.Equal(["a?[31mb c"], TextPage.Wrap("a\u001b[31mb\r\n\tc", 80));

    [Fact]
    public void Item_LongText_HangsUnderItsFirstWord()
    {
        var lines = Write(page => page.Item(string.Join(' ', Enumerable.Repeat("word", 30)))).Split('\n');

        Assert.StartsWith("  - word", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("    word", lines[1], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, TextPage.Width));
    }

    [Fact]
    public void Heading_FollowsAnEmptyLineExceptTheFirst() =>
        Assert.Equal("One\n  a\n\nTwo\n", Write(page =>
        {
            page.Heading("One");
            page.Paragraph("a");
            page.Heading("Two");
        }));

    [Fact]
    public void Heading_IsBoldOnlyWhereAsked()
    {
        Assert.Equal("\u001b[1mOne\u001b[0m\n", Write(page => page.Heading("One"), bold: true));
        Assert.Equal("One\n", Write(page => page.Heading("One")));
    }

    private static string Letters(string text) =>
        string.Concat(text.Where(c => !char.IsWhiteSpace(c)).Select(c => char.IsControl(c) ? '?' : c));
}
