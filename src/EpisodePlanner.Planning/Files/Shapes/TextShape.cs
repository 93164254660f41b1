using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Values that are written as a JSON string in a form of their own: ids, dates, times.</summary>
internal sealed class TextShape<T>(TextForm<T> form) : Shape
    where T : struct, IComparable<T>
{
    public override Type Type => typeof(T);

    public override string Wanted => form.Wanted;

    public override object Placeholder => form.Placeholder;

    public override object Read(JsonElement element, Reading reading)
    {
        if (!reading.TryText(element, Wanted, out var text))
        {
            return Placeholder;
        }

        var parsed = form.Parse(text);
        if (parsed.Problem is null)
        {
            return parsed.Value;
        }

        reading.Refuse(parsed.Problem);
        return Placeholder;
    }

    public override void Write(CanonicalWriter writer, object value) => writer.Text(form.Format((T)value));

    public override int Compare(object left, object right) => ((T)left).CompareTo((T)right);

    public override JsonObject Describe(SchemaParts parts)
    {
        var schema = new JsonObject { ["type"] = "string", ["pattern"] = form.Pattern };
        if (form.SchemaFormat is not null)
        {
            schema["format"] = form.SchemaFormat;
        }

        return schema;
    }
}
