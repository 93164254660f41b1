using System.Collections.Concurrent;
using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>A server of one workshop in memory, which does wrong what a test says; sound otherwise.</summary>
internal sealed class PretendServer : HttpMessageHandler
{
    private static readonly string[] Kinds = ["places", "tasks"];
    private const string Workshop = "/api/v1/workshops/w";
    private readonly ConcurrentDictionary<string, (JsonNode Body, int Version)> things = new();
    private readonly Lock turn = new();
    private JsonObject file = [];

    /// <summary>Whether it forgets to look at If-Match.</summary>
    public bool OverwritesOthers { get; init; }

    /// <summary>Whether it forgets to look for circles.</summary>
    public bool LetsCirclesIn { get; init; }

    /// <summary>How it answers what it does not know.</summary>
    public Func<HttpResponseMessage> Otherwise { get; init; } = () => Answer(HttpStatusCode.NotFound, "{}");

    public static HttpResponseMessage Answer(HttpStatusCode status, string body, string mediaType = "application/json") =>
        new(status) { Content = new StringContent(body, Encoding.UTF8, mediaType) };

    public HttpClient Client() => new(this) { BaseAddress = new Uri("http://pretend") };

    protected override async Task<HttpResponseMessage> SendAsync(
        HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var body = request.Content is null ? null : await request.Content.ReadAsStringAsync(cancellationToken);
        // Somebody else has the chance to come between a reading and a writing.
        await Task.Yield();
        lock (turn)
        {
            return Answer(request, body);
        }
    }

    private HttpResponseMessage Answer(HttpRequestMessage request, string? body) => Asked(request) switch
    {
        ("POST", "/api/v1/imports") => Import(JsonNode.Parse(body!)!.AsObject()),
        ("GET", "/openapi/v1.json") => Answer(HttpStatusCode.OK, """{ "paths": { "/api/v1/anything": { "get": {} } } }"""),
        ("GET", $"{Workshop}/export") => Answer(HttpStatusCode.OK, Export().ToJsonString()),
        ("GET", var path) when things.TryGetValue(path, out var thing) => Thing(thing),
        ("PUT", var path) when things.TryGetValue(path, out var thing) => Put(path, thing.Version, request, JsonNode.Parse(body!)!),
        _ => Otherwise(),
    };

    private static (string Method, string Path) Asked(HttpRequestMessage request) =>
        (request.Method.Method, request.RequestUri!.AbsolutePath);

    private HttpResponseMessage Import(JsonObject imported)
    {
        file = imported;
        foreach (var kind in Kinds)
        {
            foreach (var thing in file[kind]!.AsArray())
            {
                things[$"{Workshop}/{kind}/{thing!["id"]}"] = (thing, 1);
            }
        }

        var answer = Answer(HttpStatusCode.Created, "{}");
        answer.Headers.Location = new Uri(Workshop, UriKind.Relative);
        return answer;
    }

    private HttpResponseMessage Put(string path, int version, HttpRequestMessage request, JsonNode body)
    {
        if (!OverwritesOthers && request.Headers.IfMatch.Single().Tag != $"\"{version}\"")
        {
            return Answer(HttpStatusCode.PreconditionFailed, "{}");
        }

        var closes = body["links"]?[0]?["task"] is { } to && LinksOf(to.GetValue<string>()).Contains(path.Split('/')[^1]);
        if (closes && !LetsCirclesIn)
        {
            return Answer(HttpStatusCode.UnprocessableEntity, "{}");
        }

        things[path] = (body, version + 1);
        return Thing(things[path]);
    }

    private IEnumerable<string> LinksOf(string task) => (things[$"{Workshop}/tasks/{task}"].Body["links"]?.AsArray() ?? [])
        .Select(link => link!["task"]!.GetValue<string>());

    private JsonObject Export()
    {
        var export = file.DeepClone().AsObject();
        foreach (var kind in Kinds)
        {
            export[kind] = new JsonArray([.. file[kind]!.AsArray()
                .Select(thing => things[$"{Workshop}/{kind}/{thing!["id"]}"].Body.DeepClone())]);
        }

        return export;
    }

    private static HttpResponseMessage Thing((JsonNode Body, int Version) thing)
    {
        var answer = Answer(HttpStatusCode.OK, thing.Body.ToJsonString());
        answer.Headers.ETag = new($"\"{thing.Version}\"");
        return answer;
    }
}
