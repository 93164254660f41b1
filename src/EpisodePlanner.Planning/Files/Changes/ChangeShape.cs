using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Shapes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>Changes: objects whose member "kind" decides what else stands in them.</summary>
internal sealed class ChangeShape : Shape
{
    private const string KindMember = "kind";

    /// <summary>The one shape of all changes.</summary>
    public static ChangeShape Instance { get; } = new();

    public override Type Type => typeof(Change);

    public override string Wanted => "a change in { }, such as { \"kind\": \"name\", \"to\": \"My shed\" }";

    public override object Placeholder => new Batch([]);

    public override bool IsLeaf => false;

    public override object Read(JsonElement element, Reading reading)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            reading.RefuseKind(element, Wanted);
            return Placeholder;
        }

        return FormOf(element, reading) is { } shape ? Read(shape, element, reading) : Placeholder;
    }

    public override void Write(CanonicalWriter writer, object value)
    {
        var (kind, form) = ChangeKinds.FormOf((Change)value);
        ChangeKinds.Shapes[kind].Write(writer, form);
    }

    public override int Compare(object left, object right) =>
        throw new NotSupportedException("Changes have an order of their own; nothing is sorted by them.");

    public override object Rebuild(object value, Func<object, object> leaf)
    {
        var (kind, form) = ChangeKinds.FormOf((Change)value);
        var rebuilt = ChangeKinds.Shapes[kind].Rebuild(form, leaf);
        return ReferenceEquals(rebuilt, form) ? value : ((IChangeForm)rebuilt).ToChange(out _)!;
    }

    public override string PartName => "change";

    public override JsonObject Describe(SchemaParts parts)
    {
        var (each, mapping) = (new JsonArray(), new JsonObject());
        foreach (var (kind, shape) in ChangeKinds.Shapes)
        {
            var name = kind + "Change";
            each.Add((JsonNode)parts.Refer(name, within => Describe(kind, shape, within)));
            mapping[kind] = parts.AddressOf(name);
        }

        return new JsonObject
        {
            ["description"] = "One change; its member \"kind\" says of what.",
            ["oneOf"] = each,
            ["discriminator"] = new JsonObject { ["propertyName"] = KindMember, ["mapping"] = mapping },
        };
    }

    private static object Read(Shape shape, JsonElement element, Reading reading)
    {
        var before = reading.Count;
        var form = (IChangeForm)shape.Read(element, reading);
        if (reading.Count > before)
        {
            return Instance.Placeholder;
        }

        var change = form.ToChange(out var problem);
        if (change is null)
        {
            reading.Refuse(problem);
        }

        return change ?? Instance.Placeholder;
    }

    private static Shape? FormOf(JsonElement element, Reading reading)
    {
        var kinds = element.EnumerateObject().Where(property => Unicode.TryGet(property, out var name) && name == KindMember);
        var kind = kinds.Select(property => (JsonElement?)property.Value).FirstOrDefault();
        var wanted = $"one of {Say.Row(ChangeKinds.Shapes.Keys)}";
        if (kind is null)
        {
            reading.Refuse(KindMember, $"The member 'kind' is missing; {wanted} must be there.");
            return null;
        }

        reading.Enter(KindMember);
        Shape? shape = null;
        if (reading.TryText(kind.Value, wanted, out var text) && !ChangeKinds.Shapes.TryGetValue(text, out shape))
        {
            reading.Refuse($"{Say.Quote(text)} is not {wanted}{Say.Proposal(text, ChangeKinds.Shapes.Keys)}");
        }

        reading.Leave();
        return shape;
    }

    private static JsonObject Describe(string kind, Shape shape, SchemaParts parts)
    {
        var schema = shape.Describe(parts);
        schema["properties"]![KindMember] = new JsonObject
        {
            ["description"] = "Which kind of change it is.",
            ["type"] = "string",
            ["const"] = kind,
        };
        if (shape.Type.IsGenericType)
        {
            schema["oneOf"] = new JsonArray(Required("to"), Required("remove"));
        }

        return schema;
    }

    /// <summary>A thing is either put or removed.</summary>
    private static JsonObject Required(string member) => new()
    {
        ["properties"] = new JsonObject { [member] = new JsonObject() },
        ["required"] = new JsonArray(member),
    };
}
