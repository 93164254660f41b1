using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Microsoft.OpenApi.Reader;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Turns JSON Schema into the schemas of a description.</summary>
internal static class Schemas
{
    /// <summary>The schema of a document.</summary>
    public static IOpenApiSchema Parse(JsonObject schema, OpenApiDocument document) =>
        OpenApiModelFactory.Parse<OpenApiSchema>(
            schema.ToJsonString(), OpenApiSpecVersion.OpenApi3_1, document, out _, OpenApiConstants.Json)
        ?? throw new InvalidOperationException("A schema that is none.");
}
