using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Gathers the schemas of the records, each once, with their descriptions.</summary>
internal sealed class SchemaParts(XmlDocumentation documentation, string root = "#/$defs/")
{
    /// <summary>The schemas of records by name, in the order in which they are first used.</summary>
    public JsonObject Definitions { get; } = [];

    /// <summary>The schema of a shape; a reference where the shape has a name of its own.</summary>
    public JsonObject Of(Shape shape) => shape.PartName is { } name ? Refer(name, shape.Describe) : shape.Describe(this);

    /// <summary>A reference to the schema of this name, which is made where it is not there yet.</summary>
    public JsonObject Refer(string name, Func<SchemaParts, JsonObject> describe)
    {
        if (!Definitions.ContainsKey(name))
        {
            // Its place is taken before it is made: what it refers to may refer back to it.
            Definitions[name] = new JsonObject();
            Definitions[name] = describe(this);
        }

        return new JsonObject { ["$ref"] = AddressOf(name) };
    }

    /// <summary>Where the schema of this name stands in the document.</summary>
    public string AddressOf(string name) => root + name;

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

        var schema = Explain(new JsonObject { ["type"] = "object" }, $"T:{XmlDocumentation.NameOf(type)}");
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
