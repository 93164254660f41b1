using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>The JSON Schema of the workshop file, made from the same shapes that read and write it.</summary>
public static class WorkshopSchema
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>
    /// The schema as JSON text (2020-12). Its descriptions come from the documentation files beside the assemblies and
    /// are left out where these are missing.
    /// </summary>
    public static string Write()
    {
        var parts = new SchemaParts(Documentation([]));
        var root = ShapeFactory.Record<Workshop>().Describe(parts);
        root.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        root.Insert(1, "title", "Workshop file of Episode Planner");
        root["$defs"] = parts.Definitions;
        return root.ToJsonString(Layout) + "\n";
    }

    /// <summary>
    /// The schemas of the workshop, of everything in it, of a change, and of other records that
    /// <see cref="WorkshopFile.Read{T}(ReadOnlyMemory{byte})"/> reads, each by its name, for a document that holds them.
    /// </summary>
    /// <param name="root">Where the document keeps schemas, as references begin: "#/components/schemas/".</param>
    /// <param name="records">The other records.</param>
    public static JsonObject Parts(string root, IReadOnlyList<Type> records)
    {
        var parts = new SchemaParts(Documentation(records), root);
        foreach (var type in records.Prepend(typeof(Workshop)))
        {
            parts.Of(ShapeFactory.Record(type));
        }

        parts.Of(ChangeShape.Instance);
        return parts.Definitions;
    }

    /// <summary>The name of a record's schema among <see cref="Parts"/>.</summary>
    public static string NameOf(Type record) => ShapeFactory.Record(record).PartName!;

    private static XmlDocumentation Documentation(IEnumerable<Type> records) => new(records
        .Select(type => type.Assembly.GetName().Name!)
        .Concat(["EpisodePlanner.Planning", "EpisodePlanner.Scheduling"])
        .Distinct()
        .Select(assembly => Path.Combine(AppContext.BaseDirectory, assembly + ".xml")));
}
