using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Gathers the schemas of the records, each once, with their descriptions.</summary>
internal sealed class SchemaParts(XmlDocumentation documentation)
{
    /// <summary>The schemas of records by name, in the order in which they are first used.</summary>
    public JsonObject Definitions { get; } = [];

    /// <summary>The schema of a shape; a reference where it is a record's.</summary>
    public JsonObject Of(Shape shape)
    {
        if (shape is not IRecordShape)
        {
            return shape.Describe(this);
        }

        var name = char.ToLowerInvariant(shape.Type.Name[0]) + shape.Type.Name[1..];
        if (!Definitions.ContainsKey(name))
        {
            Definitions[name] = new JsonObject();
            Definitions[name] = shape.Describe(this);
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>The schema of an object with these members and no others.</summary>
    public JsonObject Describe(Type type, IEnumerable<MemberShape> members)
    {
        var (properties, required) = (new JsonObject(), new JsonArray());
        foreach (var member in members)
        {
            properties[member.Name] = Explain(Of(member.Shape), member.DocumentationName);
            if (member.IsRequired)
            {
                required.Add(member.Name);
            }
        }

        var schema = Explain(new JsonObject { ["type"] = "object" }, $"T:{type.FullName}");
        schema["properties"] = properties;
        schema["additionalProperties"] = false;
        if (required.Count > 0)
        {
            schema["required"] = required;
        }

        return schema;
    }

    /// <summary>A schema with what the documentation says about a member of the model.</summary>
    public JsonObject Explain(JsonObject schema, string documentationName)
    {
        if (documentation.Find(documentationName) is { } says)
        {
            schema.Insert(0, "description", says);
        }

        return schema;
    }
}
