using System.Buffers;
using System.Globalization;
using System.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>
/// Writes JSON in the one canonical form: UTF-8, two spaces a level, line feeds, an array of plain values on one line,
/// nothing escaped that need not be; or the same on one line, without any space, for storing.
/// </summary>
internal sealed class CanonicalWriter(bool isShort = false)
{
    private readonly ArrayBufferWriter<byte> output = new(4_096);
    private readonly Stack<Level> levels = new();

    /// <summary>What was written, closed by a line feed unless it is short.</summary>
    public byte[] Finish()
    {
        Raw(isShort ? "" : "\n");
        return output.WrittenSpan.ToArray();
    }

    /// <summary>Opens an object.</summary>
    public void BeginObject() => Begin("{", onOneLine: false);

    /// <summary>Writes the name of the next member.</summary>
    public void Name(string name)
    {
        NextItem();
        Text(name);
        Raw(isShort ? ":" : ": ");
    }

    /// <summary>Closes the object.</summary>
    public void EndObject() => End("}");

    /// <summary>Opens an array.</summary>
    public void BeginArray(bool onOneLine) => Begin("[", onOneLine);

    /// <summary>Moves on to the next element or member.</summary>
    public void NextItem()
    {
        var level = levels.Peek();
        Raw(level.IsEmpty ? "" : level.OnOneLine && !isShort ? ", " : ",");
        level.IsEmpty = false;
        if (!level.OnOneLine)
        {
            NewLine();
        }
    }

    /// <summary>Closes the array.</summary>
    public void EndArray() => End("]");

    /// <summary>Writes a text in quotes.</summary>
    public void Text(string text)
    {
        Raw("\"");
        var isPlain = text.AsSpan().IndexOfAnyInRange('\0', '\x1f') < 0 && text.AsSpan().IndexOfAny('"', '\\') < 0;
        Raw(isPlain ? text : Escape(text));
        Raw("\"");
    }

    /// <summary>Writes characters as they are.</summary>
    public void Raw(ReadOnlySpan<char> text) => Encoding.UTF8.GetBytes(text, output);

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        foreach (var c in text)
        {
            _ = c switch
            {
                '"' => escaped.Append("\\\""),
                '\\' => escaped.Append("\\\\"),
                '\n' => escaped.Append("\\n"),
                '\t' => escaped.Append("\\t"),
                < ' ' => escaped.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }

    private void Begin(string bracket, bool onOneLine)
    {
        Raw(bracket);
        levels.Push(new Level { OnOneLine = onOneLine });
    }

    private void End(string bracket)
    {
        var level = levels.Pop();
        if (!level.IsEmpty && !level.OnOneLine)
        {
            NewLine();
        }

        Raw(bracket);
    }

    private void NewLine()
    {
        if (isShort)
        {
            return;
        }

        Raw("\n");
        for (var i = 0; i < levels.Count; i++)
        {
            Raw("  ");
        }
    }

    private sealed class Level
    {
        public bool OnOneLine { get; init; }

        public bool IsEmpty { get; set; } = true;
    }
}
