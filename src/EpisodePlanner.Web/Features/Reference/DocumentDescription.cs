using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>What a description says about the API as a whole, with the schemas of everything.</summary>
/// <param name="schemas">The schemas of bodies.</param>
internal sealed class DocumentDescription(ReferenceSchemas schemas) : IOpenApiDocumentTransformer
{
    /// <summary>The name of the schema of problems.</summary>
    public const string ProblemSchema = "problem";

    private static readonly Dictionary<string, string> TagSays = new()
    {
        ["Workshops"] = "Everything one maker plans is a workshop.",
        ["Settings"] = "What holds for the whole workshop.",
        ["Plan"] = "Dates and their causes, computed from the workshop, and the plan the maker accepted.",
        ["Changes"] = "Every change is kept, and can be undone.",
        ["Deleted"] = "What was deleted can be brought back for 30 days.",
        ["Supposes"] = "Drafts of changes beside the real plan.",
        ["Import and export"] = "A whole workshop as one file.",
        ["Texts"] = "What is written from the plan and the log.",
    };

    /// <inheritdoc/>
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "Episode Planner",
            Version = "1",
            Description = "Plans the episodes of a maker's builds. Bodies are in the form of the workshop file (FORMAT.md). What is "
                + "read carries an ETag; what is changed needs it back as If-Match. Refusals are problem details (RFC 9457).",
        };
        document.Servers = [new OpenApiServer { Url = "/", Description = "The server that this description comes from." }];
        document.Security = [];
        document.Components ??= new OpenApiComponents();
        document.Components.Schemas ??= new Dictionary<string, IOpenApiSchema>();
        foreach (var (name, schema) in schemas.Components.Append(new(ProblemSchema, Problem())))
        {
            document.Components.Schemas[name] = Schemas.Parse(schema!.AsObject(), document);
        }

        document.Tags = document.Paths.Values.SelectMany(path => path.Operations!.Values).SelectMany(operation => operation.Tags!)
            .Select(tag => tag.Name!).Distinct().Select(Tag).ToHashSet();
        return Task.CompletedTask;
    }

    private static OpenApiTag Tag(string name) => new()
    {
        Name = name,
        Description = TagSays.GetValueOrDefault(name, $"One of the workshop's sets of things: {name}."),
    };

    private static JsonObject Problem() => JsonNode.Parse("""
        {
          "type": "object",
          "description": "Why a request was not carried out (RFC 9457).",
          "required": ["type", "title", "status", "detail"],
          "properties": {
            "type": { "type": "string", "format": "uri-reference", "description": "The kind of problem, an address that explains it." },
            "title": { "type": "string", "description": "The kind of problem in words." },
            "status": { "type": "integer", "minimum": 400, "maximum": 599, "description": "The status code." },
            "detail": { "type": "string", "description": "What is wrong this time, and what would be right." },
            "instance": { "type": "string", "format": "uri-reference", "description": "The request." },
            "errors": {
              "type": "array",
              "description": "Everything that is wrong, each with its place.",
              "items": {
                "type": "object",
                "required": ["where", "says"],
                "properties": {
                  "where": { "type": "string", "description": "The place as a JSON path." },
                  "says": { "type": "string", "description": "What is wrong there, and what would be right." }
                }
              }
            },
            "yours": { "type": ["string", "null"], "description": "For a stale request: the tags that it named." },
            "current": { "type": ["string", "null"], "description": "For a stale request: the tag of what is there; null where nothing is." },
            "things": {
              "type": "array",
              "description": "For a stale batch: what was changed since.",
              "items": {
                "type": "object",
                "required": ["kind", "id"],
                "properties": {
                  "kind": { "type": "string", "description": "Its kind." },
                  "id": { "type": "string", "description": "Its id." },
                  "current": { "type": ["string", "null"], "description": "Its tag; null where it is gone." }
                }
              }
            }
          }
        }
        """)!.AsObject();
}
