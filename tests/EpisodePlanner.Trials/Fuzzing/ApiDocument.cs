using System.Text.Json.Nodes;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>The server's own description of its API.</summary>
internal sealed class ApiDocument(JsonNode root)
{
    private static readonly HashSet<string> Methods = ["get", "put", "post", "delete", "patch", "head"];

    /// <summary>Every operation, in the document's order.</summary>
    public IReadOnlyList<ApiOperation> Operations => [.. root["paths"]!.AsObject().SelectMany(Of)];

    /// <summary>What a node stands for, where it only refers to it.</summary>
    public JsonNode? Resolve(JsonNode? node)
    {
        while (node is JsonObject && node["$ref"]?.GetValue<string>() is { } reference)
        {
            node = reference.TrimStart('#', '/').Split('/').Aggregate((JsonNode?)root, (at, step) => at?[Unescape(step)]);
        }

        return node;
    }

    private IEnumerable<ApiOperation> Of(KeyValuePair<string, JsonNode?> path)
    {
        var item = path.Value!.AsObject();
        foreach (var (method, operation) in item.Where(member => Methods.Contains(member.Key)))
        {
            var body = Resolve(operation!["requestBody"])?["content"]?.AsObject().FirstOrDefault();
            yield return new ApiOperation(
                HttpMethod.Parse(method.ToUpperInvariant()),
                path.Key,
                [.. Parameters(item), .. Parameters(operation)],
                body?.Value?["schema"],
                body?.Key);
        }
    }

    private IEnumerable<ApiParameter> Parameters(JsonNode node) => (node["parameters"]?.AsArray() ?? [])
        .Select(Resolve)
        .Select(parameter => new ApiParameter(
            parameter!["name"]!.GetValue<string>(), parameter["in"]!.GetValue<string>(), parameter["schema"]));

    private static string Unescape(string step) =>
        step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
}
