using System.Text.Encodings.Web;
using System.Text.Json;
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
        var parts = new SchemaParts(new XmlDocumentation(
        [
            DocumentationOf("EpisodePlanner.Planning"),
            DocumentationOf("EpisodePlanner.Scheduling"),
        ]));
        var root = ShapeFactory.Record<Workshop>().Describe(parts);
        root.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        root.Insert(1, "title", "Workshop file of Episode Planner");
        root["$defs"] = parts.Definitions;
        return root.ToJsonString(Layout) + "\n";
    }

    private static string DocumentationOf(string assembly) => Path.Combine(AppContext.BaseDirectory, assembly + ".xml");
}
