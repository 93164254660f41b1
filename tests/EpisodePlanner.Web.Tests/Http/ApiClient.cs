using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>What a server answered.</summary>
internal sealed record Reply(HttpStatusCode Status, string? MediaType, string? Tag, string? Location, byte[] Bytes)
{
    public string Text => Encoding.UTF8.GetString(Bytes);

    public JsonObject Json => JsonNode.Parse(Bytes)!.AsObject();

    /// <summary>The places that a problem names.</summary>
    public IEnumerable<string> Wheres => Json["errors"]!.AsArray().Select(error => error!["where"]!.GetValue<string>());

    /// <summary>The reply, where it is as it must be.</summary>
    public Reply Must(HttpStatusCode status)
    {
        Assert.True(Status == status, $"{(int)Status}, not {(int)status}: {Text}");
        return this;
    }

    /// <summary>The reply, where it is this kind of problem in the form of RFC 9457 §3.1.</summary>
    public Reply MustBe(HttpStatusCode status, string problem)
    {
        Must(status);
        Assert.Equal("application/problem+json", MediaType);
        Assert.Equal($"/problems/{problem}", Json["type"]!.GetValue<string>());
        Assert.Equal((int)status, Json["status"]!.GetValue<int>());
        Assert.NotEmpty(Json["title"]!.GetValue<string>());
        Assert.NotEmpty(Json["detail"]!.GetValue<string>());
        return this;
    }
}

/// <summary>Asks a server.</summary>
internal sealed class ApiClient(HttpClient client)
{
    public const string Root = "/api/v1";

    public Task<Reply> Get(string path, params (string Name, string Value)[] headers) => Send(HttpMethod.Get, path, null, headers);

    public Task<Reply> Post(string path, string? body = null, params (string Name, string Value)[] headers) =>
        Send(HttpMethod.Post, path, body, headers);

    public Task<Reply> Put(string path, string body, params (string Name, string Value)[] headers) =>
        Send(HttpMethod.Put, path, body, headers);

    public Task<Reply> Delete(string path, params (string Name, string Value)[] headers) =>
        Send(HttpMethod.Delete, path, null, headers);

    public async Task<Reply> Send(
        HttpMethod method, string path, string? body, (string Name, string Value)[] headers, string type = "application/json")
    {
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
        if (body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = MediaTypeHeaderValue.Parse(type) } };
        }

        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return new Reply(
            response.StatusCode,
            response.Content.Headers.ContentType?.MediaType,
            response.Headers.ETag?.ToString(),
            response.Headers.Location?.ToString(),
            await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    /// <summary>Makes a workshop of a file.</summary>
    /// <returns>Its path.</returns>
    public async Task<string> Import(string file) => (await Post($"{Root}/imports", file)).Must(HttpStatusCode.Created).Location!;

    /// <summary>Makes a workshop of the small example.</summary>
    /// <returns>Its path.</returns>
    public Task<string> ImportExample() => Import(Example.Text);

    /// <summary>Makes a workshop of the demo.</summary>
    /// <returns>Its path.</returns>
    public async Task<string> ImportDemo() =>
        await Import(await File.ReadAllTextAsync(CommandLine.Papers.Demo, TestContext.Current.CancellationToken));
}
