using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Features.Supposes;
using EpisodePlanner.Web.Features.Workshops;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Examples of bodies, taken from one small workshop that is sound.</summary>
internal static class ReferenceExamples
{
    private const string Resource = "example-workshop.json";

    private static readonly JsonObject Example = Load();

    /// <summary>An example of a record, or null.</summary>
    public static JsonNode? Find(Type type) =>
        type == typeof(Workshop) ? Example.DeepClone()
        : type == typeof(Settings) ? Of("settings")
        : type == typeof(AcceptedPlan) ? Of("accepted")
        : type == typeof(WorkshopAbout) ? new JsonObject { ["name"] = Of("name"), ["zone"] = Of("zone") }
        : type == typeof(ChangeRequest) ? new JsonObject { ["base"] = 57, ["changes"] = Changes() }
        : type == typeof(SupposeRequest) ? new JsonObject { ["name"] = "Weld faster", ["changes"] = Changes() }
        : ThingKinds.All.FirstOrDefault(kind => kind.Type == type) is { } found ? Example[found.Name]!.AsArray()[^1]!.DeepClone()
        : null;

    private static JsonNode Of(string member) => Example[member]!.DeepClone();

    private static JsonArray Changes() =>
    [
        new JsonObject { ["kind"] = "task", ["id"] = "weld-frame", ["to"] = Find(typeof(WorkTask)) },
        new JsonObject { ["kind"] = "booking", ["id"] = "track-day", ["remove"] = true },
    ];

    private static JsonObject Load()
    {
        using var stream = typeof(ReferenceExamples).Assembly.GetManifestResourceStream(Resource)!;
        return JsonNode.Parse(stream)!.AsObject();
    }
}
