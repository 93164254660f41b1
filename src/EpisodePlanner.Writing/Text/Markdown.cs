using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace EpisodePlanner.Writing;

/// <summary>
/// A run of Markdown on one line. It is only made from interpolated strings of this project: what stands between the
/// holes is ours, whatever goes into a hole is escaped, unless it is Markdown already.
/// </summary>
public readonly record struct Markdown
{
    private readonly string? text;

    private Markdown(string text) => this.text = text;

    /// <summary>The text as it goes into the page.</summary>
    public string Text => text ?? "";

    /// <summary>Whether it is empty.</summary>
    public bool IsEmpty => Text.Length == 0;

    internal static Markdown Of(ref MarkdownHandler sentence) => new(sentence.ToText());

    /// <summary>The pieces one after the other, with our own words between them.</summary>
    internal static Markdown Join(string between, IEnumerable<Markdown> pieces) =>
        new(string.Join(between, pieces.Select(piece => piece.Text)));

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Builds <see cref="Markdown"/> from an interpolated string and escapes every text in its holes.</summary>
[InterpolatedStringHandler]
internal readonly struct MarkdownHandler
{
    private readonly StringBuilder builder;

    public MarkdownHandler(int literalLength, int formattedCount) =>
        builder = new StringBuilder(literalLength + (16 * formattedCount));

    public void AppendLiteral(string literal) => builder.Append(literal);

    public void AppendFormatted(string? text) => builder.Append(MarkdownText.Escape(text));

    public void AppendFormatted(int number) => builder.Append(CultureInfo.InvariantCulture, $"{number}");

    public void AppendFormatted(decimal number) => builder.Append(CultureInfo.InvariantCulture, $"{number:0.##}");

    public void AppendFormatted(Markdown markdown) => builder.Append(markdown.Text);

    public string ToText() => builder.ToString();
}
