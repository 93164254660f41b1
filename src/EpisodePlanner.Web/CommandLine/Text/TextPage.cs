using System.Text;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>Writes paragraphs for a page of 80 columns: wrapped at spaces, with headings that are bold on a terminal.</summary>
public sealed class TextPage(TextWriter output, bool bold) : ISheet
{
    /// <summary>The columns of a page.</summary>
    public const int Width = 80;

    private const string Bold = "\u001b[1m";
    private const string Plain = "\u001b[0m";
    private bool isEmpty = true;

    /// <summary>A page on the output, bold only where a person reads it on a terminal.</summary>
    public static TextPage On(Surroundings surroundings) =>
        new(surroundings.Output, surroundings is { OutputIsTerminal: true, WithColour: true });

    /// <summary>A heading, after an empty line where something stands above.</summary>
    public void Heading(string text)
    {
        if (!isEmpty)
        {
            output.Write('\n');
        }

        foreach (var line in Wrap(text, Width))
        {
            Line(bold ? $"{Bold}{line}{Plain}" : line);
        }
    }

    /// <summary>A paragraph under a heading.</summary>
    public void Paragraph(string text) => Hang("  ", "  ", text);

    /// <summary>An item of a list.</summary>
    public void Item(string text) => Hang("  - ", "    ", text);

    /// <summary>A line below an item or paragraph that belongs to it.</summary>
    public void Below(string text) => Hang("    ", "      ", text);

    /// <summary>The lines of a text that fit a width; a word that is wider than a line is broken.</summary>
    public static IEnumerable<string> Wrap(string text, int width)
    {
        var line = new StringBuilder();
        foreach (var word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width)))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        if (line.Length > 0)
        {
            yield return line.ToString();
        }
    }

    private static IEnumerable<string> Pieces(string word, int width) => word.Chunk(width).Select(piece => new string(piece));

    /// <summary>Nothing that a name holds may steer a terminal.</summary>
    private static string Clean(string text) =>
        string.Create(text.Length, text, (to, from) =>
        {
            for (var i = 0; i < to.Length; i++)
            {
                to[i] = char.IsWhiteSpace(from[i]) ? ' ' : char.IsControl(from[i]) ? '?' : from[i];
            }
        });

    private void Hang(string first, string others, string text)
    {
        var lead = first;
        foreach (var line in Wrap(text, Width - others.Length))
        {
            Line(lead + line);
            lead = others;
        }
    }

    private void Line(string line)
    {
        output.Write(line);
        output.Write('\n');
        isEmpty = false;
    }
}
