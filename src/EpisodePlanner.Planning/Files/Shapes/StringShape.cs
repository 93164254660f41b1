using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Free text for people, of a limited length in characters.</summary>
internal sealed class StringShape(int least, int most, bool manyLines) : Shape
{
    public override Type Type => typeof(string);

    public override string Wanted => "a text in double quotes";

    public override object Placeholder => "?";

    public override object Read(JsonElement element, Reading reading)
    {
        if (!reading.TryText(element, Wanted, out var text))
        {
            return Placeholder;
        }

        if (Problem(text) is { } problem)
        {
            reading.Refuse(problem, alone: true);
        }

        return text;
    }

    public override void Write(CanonicalWriter writer, object value) => writer.Text((string)value);

    public override int Compare(object left, object right) => string.CompareOrdinal((string)left, (string)right);

    public override JsonObject Describe(SchemaParts parts)
    {
        var control = manyLines ? @"\u0000-\u0008\u000B-\u001F\u007F-\u009F" : @"\u0000-\u001F\u007F-\u009F";
        var blank = least > 0 ? @"(?=[\s\S]*\S)" : "";
        var schema = new JsonObject { ["type"] = "string", ["maxLength"] = most, ["pattern"] = $"^{blank}[^{control}]*$" };
        if (least > 0)
        {
            schema["minLength"] = least;
        }

        return schema;
    }

    private string? Problem(string text)
    {
        if (least > 0 && string.IsNullOrWhiteSpace(text))
        {
            return "This text is empty; leave the member out where it is optional, or write at least one character.";
        }

        return text.Length > most
            ? $"This text has {Say.Number(text.Length)} characters; at most {Say.Number(most)} are possible."
            : ControlProblem(text);
    }

    private string? ControlProblem(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) && !(manyLines && (text[i] is '\t' or '\n')))
            {
                return $"Character {i + 1} of this text is the control character U+{(int)text[i]:X4}; "
                    + (manyLines ? "only tabs and line feeds are possible." : "it must be one line without tabs.");
            }
        }

        return null;
    }
}
