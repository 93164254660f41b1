using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>True or false.</summary>
internal sealed class BooleanShape : Shape
{
    public override Type Type => typeof(bool);

    public override string Wanted => "true or false, without quotes";

    public override object Placeholder => false;

    public override object Read(JsonElement element, Reading reading)
    {
        if (element.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            reading.RefuseKind(element, Wanted);
        }

        return element.ValueKind is JsonValueKind.True;
    }

    public override void Write(CanonicalWriter writer, object value) => writer.Raw((bool)value ? "true" : "false");

    public override int Compare(object left, object right) => ((bool)left).CompareTo((bool)right);

    public override JsonObject Describe(SchemaParts parts) => new() { ["type"] = "boolean" };
}
