using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Things;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>The parameters of an operation: of its path, its query and its headers.</summary>
internal static class ParameterDescriptions
{
    private const string Tags = """^(\*|(W/)?"[\x21\x23-\x7e]*"(\s*,\s*(W/)?"[\x21\x23-\x7e]*")*)$""";

    private static readonly Dictionary<string, (string Says, string Schema, string Example)> Headers = new()
    {
        [HeaderNames.IfMatch] = (
            "The ETag of what is expected to be there, several of them, or * for whatever is there (RFC 9110 §13.1.1).",
            new JsonObject { ["type"] = "string", ["pattern"] = Tags }.ToJsonString(),
            "\"17\""),
        [HeaderNames.IfNoneMatch] = (
            "For a read, ETags that the client has already; for a change, * where nothing may be there yet (RFC 9110 §13.1.2).",
            new JsonObject { ["type"] = "string", ["pattern"] = Tags }.ToJsonString(),
            "\"17\""),
        [IdempotencyKey.Header] = (
            "A key of the client's choice. The same request with the same key is carried out once, and answered as the first time, for a day.",
            """{ "type": "string", "minLength": 1, "maxLength": 200, "pattern": "^[\\x21-\\x7e]+$" }""",
            "0199e1a4-7c1e-7a7b-9a57-3f0d8a9c1b2e"),
    };

    /// <summary>All of them; those of paths and headers are shared by all operations.</summary>
    public static IEnumerable<IOpenApiParameter> Of(string path, IList<object> metadata, OpenApiDocument document) =>
    [
        .. RoutePatternFactory.Parse(path).Parameters.Select(parameter => Shared(OfPath(parameter.Name, document), document)),
        .. metadata.OfType<QueryOf>().SelectMany(query => OfQuery(query.Type, document)),
        .. metadata.OfType<TakesHeaders>().SelectMany(headers => headers.Names).Distinct()
            .Select(name => Shared(OfHeader(name, document), document)),
    ];

    private static OpenApiParameterReference Shared(OpenApiParameter parameter, OpenApiDocument document)
    {
        var name = JsonNamingPolicy.CamelCase.ConvertName(parameter.Name!.Replace("-", "", StringComparison.Ordinal));
        document.Components ??= new OpenApiComponents();
        document.Components.Parameters ??= new SortedDictionary<string, IOpenApiParameter>(StringComparer.Ordinal);
        document.Components.Parameters.TryAdd(name, parameter);
        return new OpenApiParameterReference(name, document);
    }

    private static OpenApiParameter OfPath(string name, OpenApiDocument document) => new()
    {
        Name = name,
        In = ParameterLocation.Path,
        Required = true,
        Description = name switch
        {
            FoundWorkshop.Parameter => "The workshop's id.",
            "version" => "The version that the change led to.",
            "kind" => "The kind of thing.",
            _ => "The id.",
        },
        Schema = Schemas.Parse(
            name switch
            {
                "version" => new JsonObject { ["type"] = "integer", ["format"] = "int64", ["minimum"] = 1 },
                "kind" => new JsonObject
                {
                    ["type"] = "string",
                    ["enum"] = new JsonArray([.. ThingKinds.All.Select(kind => (JsonNode?)ThingPaths.NameOf(kind))]),
                },
                _ => new JsonObject { ["type"] = "string", ["pattern"] = "^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$" },
            },
            document),
    };

    private static IEnumerable<OpenApiParameter> OfQuery(Type type, OpenApiDocument document)
    {
        var query = ReferenceSchemas.QueryOf(type);
        var required = query["required"]?.AsArray().Select(name => name!.GetValue<string>()).ToHashSet() ?? [];
        foreach (var (name, member) in query["properties"]!.AsObject())
        {
            var schema = member!.DeepClone().AsObject();
            schema.Remove("description");
            yield return new OpenApiParameter
            {
                Name = name,
                In = ParameterLocation.Query,
                Required = required.Contains(name),
                Description = member["description"]?.GetValue<string>(),
                Schema = Schemas.Parse(schema, document),
            };
        }
    }

    private static OpenApiParameter OfHeader(string name, OpenApiDocument document) => new()
    {
        Name = name,
        In = ParameterLocation.Header,
        Description = Headers[name].Says,
        Schema = Schemas.Parse(JsonNode.Parse(Headers[name].Schema)!.AsObject(), document),
        Example = Headers[name].Example,
    };
}
