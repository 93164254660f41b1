using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Web.Forms;

/// <summary>The schema of the workshop's things, read once: forms have just its members, limits and explanations.</summary>
internal static class FormSchema
{
    private const string About = "about";

    private static readonly Lazy<JsonObject> Definitions = new(Read);

    /// <summary>The schema of a record: "workTask".</summary>
    public static JsonObject Of(string definition) => Definitions.Value[definition]!.AsObject();

    /// <summary>The members of a record in their order: name, schema, and whether it must be there.</summary>
    public static IEnumerable<FormMember> Members(string definition)
    {
        var schema = Of(definition);
        var required = schema["required"]?.AsArray().Select(name => (string)name!).ToHashSet() ?? [];
        return schema["properties"]!.AsObject()
            .Select(member => new FormMember(definition, member.Key, member.Value!.AsObject(), required.Contains(member.Key)));
    }

    /// <summary>The records, and as one more what the workshop says about itself: its name and its zone.</summary>
    private static JsonObject Read()
    {
        var root = JsonNode.Parse(WorkshopSchema.Write())!;
        var definitions = root["$defs"]!.AsObject();
        definitions[About] = new JsonObject
        {
            ["properties"] = new JsonObject
            {
                ["name"] = root["properties"]!["name"]!.DeepClone(),
                ["zone"] = root["properties"]!["zone"]!.DeepClone(),
            },
            ["required"] = new JsonArray("name", "zone"),
        };
        return definitions;
    }
}

/// <summary>A member of a record, as a form sees it.</summary>
/// <param name="Owner">The record.</param>
/// <param name="Name">The member's name.</param>
/// <param name="Schema">Its schema.</param>
/// <param name="IsRequired">Whether it must be there.</param>
internal sealed record FormMember(string Owner, string Name, JsonObject Schema, bool IsRequired)
{
    /// <summary>The record that the member holds, or null.</summary>
    public string? Record => RecordOf(Schema);

    /// <summary>The schema of the elements of an array, or null.</summary>
    public JsonObject? Items => Schema["items"]?.AsObject();

    /// <summary>The record that an array holds, or null.</summary>
    public string? ItemRecord => Items is { } items ? RecordOf(items) : null;

    /// <summary>What it means.</summary>
    public string? Help => (string?)Schema["description"];

    /// <summary>Whether it is filled in now and then only.</summary>
    public bool IsRare => FormWords.IsRare(Owner, Name) && !IsRequired && Entry != FormEntry.Hidden;

    /// <summary>What kind of thing it refers to, or null.</summary>
    public string? RefersTo => FormReferences.Find(Owner, Name);

    /// <summary>How the field of this member is filled in.</summary>
    public FormEntry Entry => this switch
    {
        { Name: "id" } or { Owner: "taskLink", Name: "assumed" } => FormEntry.Hidden,
        { Owner: "stage", Name: "needs" } => FormEntry.Needs,
        { ItemRecord: not null } => FormEntry.List,
        { Record: not null } => FormEntry.Group,
        { Items: not null, RefersTo: not null } => FormEntry.Several,
        { Items: { } items } when items["oneOf"] is not null => FormEntry.Several,
        { Items: not null } => FormEntry.Lines,
        { RefersTo: not null } => FormEntry.One,
        _ when Schema["oneOf"] is not null => FormEntry.One,
        _ => (string?)Schema["type"] switch
        {
            "boolean" => FormEntry.Tick,
            "number" or "integer" => FormEntry.Number,
            _ => FormEntry.Text,
        },
    };

    private static string? RecordOf(JsonObject schema) => ((string?)schema["$ref"])?["#/$defs/".Length..];
}

/// <summary>How a field is filled in.</summary>
internal enum FormEntry
{
    /// <summary>Not at all.</summary>
    Hidden,

    /// <summary>Text, a day, a time or a moment.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>Yes or no.</summary>
    Tick,

    /// <summary>One of a few.</summary>
    One,

    /// <summary>Several of a few.</summary>
    Several,

    /// <summary>Values, a line each.</summary>
    Lines,

    /// <summary>Stations by name, a line for each that is needed: "Nessa or Tam".</summary>
    Needs,

    /// <summary>Fields that belong together.</summary>
    Group,

    /// <summary>Groups of fields.</summary>
    List,
}
