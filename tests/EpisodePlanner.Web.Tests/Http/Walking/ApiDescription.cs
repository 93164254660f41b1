using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http.Walking;

/// <summary>An operation of the API as its description tells it.</summary>
internal sealed record Operation(string Id, HttpMethod Method, string Path, JsonObject Says, ApiDescription Description)
{
    /// <summary>The name of the schema of its body, or null.</summary>
    public string? Body =>
        Says["requestBody"]?["content"]?["application/json"]?["schema"]?["$ref"]?.GetValue<string>().Split('/')[^1];

    public bool Takes(string header) => (Says["parameters"]?.AsArray() ?? []).Any(
        parameter => Description.Resolve(parameter!)["name"]!.GetValue<string>() == header);

    /// <summary>The schema of an answer; null where it has no JSON.</summary>
    public JsonNode? Answer(int status) => Says["responses"]![$"{status}"]?["content"]?["application/json"]?["schema"];
}

/// <summary>The description of the API, read as a client reads it.</summary>
internal sealed class ApiDescription(JsonObject root)
{
    public JsonObject Root => root;

    public JsonObject Schemas => root["components"]!["schemas"]!.AsObject();

    public IReadOnlyList<Operation> Operations =>
    [
        .. root["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject().Select(item => new Operation(
            item.Value!["operationId"]!.GetValue<string>(),
            HttpMethod.Parse(item.Key.ToUpperInvariant()),
            path.Key,
            item.Value!.AsObject(),
            this))),
    ];

    public JsonObject Resolve(JsonNode node) => node["$ref"]?.GetValue<string>() is { } reference
        ? reference.Split('/').Skip(1).Aggregate((JsonNode)root, (at, step) => at[step]!).AsObject()
        : node.AsObject();
}
