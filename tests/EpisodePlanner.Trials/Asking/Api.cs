using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Trials.Asking;

/// <summary>Asks the server as any other program would.</summary>
public sealed class Api(HttpClient client, CancellationToken stop)
{
    private const string Json = "application/json";

    /// <summary>Where everything begins.</summary>
    public const string Root = "/api/v1";

    /// <summary>Ends the trial.</summary>
    public CancellationToken Stop => stop;

    /// <summary>Reads.</summary>
    public Task<Answer> Get(string path) => Send(HttpMethod.Get, path, null, []);

    /// <summary>Makes what the body says, which must come out well.</summary>
    public async Task<Answer> Create(string path, JsonNode body) =>
        (await Send(HttpMethod.Post, path, Content(body), [])).Must($"POST {path}");

    /// <summary>Replaces what has still this version.</summary>
    public Task<Answer> Put(string path, JsonNode body, string version) =>
        Send(HttpMethod.Put, path, Content(body), [("If-Match", version)]);

    /// <summary>Makes a workshop of a file.</summary>
    /// <returns>Its path.</returns>
    public async Task<string> Import(JsonNode file)
    {
        var answer = await Create($"{Root}/imports", file);
        return answer.Location is { } made
            ? new Uri(client.BaseAddress!, made).AbsolutePath
            : throw new TrialException($"An import without Location: {answer}");
    }

    /// <summary>Sends a request of any kind.</summary>
    public async Task<Answer> Send(
        HttpMethod method, string path, HttpContent? content, IEnumerable<(string Name, string Value)> headers)
    {
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative)) { Content = content };
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using var response = await client.SendAsync(request, stop);
        return new Answer(
            response.StatusCode,
            response.Content.Headers.ContentType?.MediaType,
            response.Headers.NonValidated.TryGetValues("ETag", out var tags) ? tags.ToString() : null,
            response.Headers.Location,
            await response.Content.ReadAsStringAsync(stop));
    }

    private static ByteArrayContent Content(JsonNode body) =>
        new(Encoding.UTF8.GetBytes(body.ToJsonString())) { Headers = { ContentType = new MediaTypeHeaderValue(Json) } };
}
