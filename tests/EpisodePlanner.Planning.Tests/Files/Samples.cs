using System.Reflection;
using System.Text;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Workshop files to read.</summary>
internal static class Samples
{
    /// <summary>A file in canonical form, written by hand, that uses every member of the format.</summary>
    public static byte[] Whole { get; } = ReadWhole();

    /// <summary>The file with one piece of its text replaced; the piece must be there.</summary>
    public static string WholeWith(string piece, string other)
    {
        var text = Encoding.UTF8.GetString(Whole);
        Assert.Contains(piece, text, StringComparison.Ordinal);
        var at = text.IndexOf(piece, StringComparison.Ordinal);
        return text[..at] + other + text[(at + piece.Length)..];
    }

    private static byte[] ReadWhole()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("whole.workshop.json")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
