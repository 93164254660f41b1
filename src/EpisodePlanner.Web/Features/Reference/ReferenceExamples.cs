using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Examples of bodies, taken from one small workshop that is sound.</summary>
internal static class ReferenceExamples
{
    /// <summary>An example of a record, or null.</summary>
    public static JsonNode? Find(Type type) => null;
}
