using System.Text.Json.Nodes;
using EpisodePlanner.Web.Serving;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Describes refusals; operations with the same ones share a response.</summary>
internal static class ProblemDescriptions
{
    /// <summary>The name of the schema of problems.</summary>
    public const string SchemaName = "problem";

    /// <summary>The response for problems that have one status.</summary>
    public static OpenApiResponseReference Of(ProblemType[] types, OpenApiDocument document)
    {
        var sorted = types.OrderBy(type => type.Name, StringComparer.Ordinal).ToList();
        var name = string.Join("Or", sorted.Select((type, i) => Camel(type.Name, i > 0)));
        document.Components ??= new OpenApiComponents();
        document.Components.Responses ??= new SortedDictionary<string, IOpenApiResponse>(StringComparer.Ordinal);
        document.Components.Responses.TryAdd(name, new OpenApiResponse
        {
            Description = string.Join("; or: ", sorted.Select(type => $"{type.Title} (`{type.Address}`). {type.Explanation}")),
            Content = new Dictionary<string, OpenApiMediaType>
            {
                [Problem.MediaType] = new OpenApiMediaType
                {
                    Schema = new OpenApiSchemaReference(SchemaName, document),
                    Example = Example(sorted[0]),
                },
            },
        });
        return new OpenApiResponseReference(name, document);
    }

    /// <summary>The schema of every problem.</summary>
    public static JsonObject Schema() => JsonNode.Parse("""
        {
          "type": "object",
          "description": "Why a request was not carried out (RFC 9457); what does not apply is left out.",
          "required": ["type", "title", "status", "detail"],
          "properties": {
            "type": { "type": "string", "format": "uri-reference", "description": "The address of the explanation of this kind of problem." },
            "title": { "type": "string", "description": "The kind in a few words." },
            "status": { "type": "integer", "minimum": 400, "maximum": 599, "description": "The HTTP status." },
            "detail": { "type": "string", "description": "What is wrong this time, and what would be right." },
            "errors": {
              "type": "array",
              "description": "Every place that is wrong.",
              "items": {
                "type": "object",
                "required": ["where", "says"],
                "properties": {
                  "where": { "type": "string", "description": "The place, a JSON path into what was sent, or the name of a header." },
                  "says": { "type": "string", "description": "What is wrong, and what would be right." }
                }
              }
            },
            "yours": { "type": "string", "description": "The version that the request named, as ETags." },
            "current": { "type": "string", "description": "The version that is there, as an ETag; absent where there is none." },
            "things": {
              "type": "array",
              "description": "What was changed meanwhile, where it is more than the thing at the address.",
              "items": {
                "type": "object",
                "required": ["kind", "id"],
                "properties": {
                  "kind": { "type": "string", "description": "Its kind, as in the workshop file." },
                  "id": { "type": "string", "description": "Its id." },
                  "current": { "type": "string", "description": "The version that is there, as an ETag; absent where it is gone." }
                }
              }
            },
            "since": { "type": "string", "format": "date-time", "description": "When it was deleted." },
            "restore": { "type": "string", "format": "uri-reference", "description": "Where a POST brings it back." },
            "trace": { "type": "string", "description": "The number under which the server's log tells more." }
          }
        }
        """)!.AsObject();

    private static JsonObject Example(ProblemType type) => new()
    {
        ["type"] = type.Address,
        ["title"] = type.Title,
        ["status"] = type.Status,
        ["detail"] = type.Explanation,
    };

    private static string Camel(string name, bool isInside)
    {
        var words = name.Split('-').Select((word, i) => i > 0 || isInside ? char.ToUpperInvariant(word[0]) + word[1..] : word);
        return string.Concat(words);
    }
}
