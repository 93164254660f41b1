using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Web.Composition;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Tests.CommandLine;
using Microsoft.AspNetCore.Builder;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The real server in this process, on a port of its own, with a data folder of its own.</summary>
internal sealed class RunningPlanner : IAsyncDisposable
{
    private readonly Papers? papers;

    private RunningPlanner(WebApplication app, string folder, Papers? papers)
    {
        (App, Folder, this.papers) = (app, folder, papers);
        Address = new Uri(app.Urls.Single());
        var handler = new SocketsHttpHandler { UseProxy = false, AllowAutoRedirect = false, UseCookies = false };
        Client = new HttpClient(handler) { BaseAddress = Address };
    }

    public WebApplication App { get; }

    /// <summary>The folder of its data.</summary>
    public string Folder { get; }

    public Uri Address { get; }

    public HttpClient Client { get; }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Starts it.</summary>
    /// <param name="more">Endpoints of the test.</param>
    /// <param name="adjust">Settings of the test.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="folder">A folder of the test's, which stays.</param>
    public static async Task<RunningPlanner> Start(
        Action<WebApplication>? more = null,
        Func<ServerSettings, ServerSettings>? adjust = null,
        TimeProvider? clock = null,
        string? folder = null)
    {
        var papers = folder is null ? new Papers() : null;
        var settings = new ServerSettings { DataFolder = folder ?? papers!.Folder, Addresses = [new ListenAddress("127.0.0.1", 0)] };
        var app = PlannerServer.Build(adjust?.Invoke(settings) ?? settings, clock ?? new StillClock(Shell.Anchor));
        more?.Invoke(app);
        await app.StartAsync(Stop);
        await PlannerServer.Prepared(app);
        return new RunningPlanner(app, settings.DataFolder, papers);
    }

    public Task<HttpResponseMessage> Get(string path, params (string Name, string Value)[] headers) =>
        Send(HttpMethod.Get, path, null, headers);

    public Task<HttpResponseMessage> Send(
        HttpMethod method, string path, HttpContent? content = null, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, path) { Content = content };
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return Client.SendAsync(request, Stop);
    }

    /// <summary>Sends bytes as they are and reads the answer until the server closes.</summary>
    public async Task<string> Raw(string request)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(Address.Host, Address.Port, Stop);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.Latin1.GetBytes(request), Stop);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return await reader.ReadToEndAsync(Stop);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await App.StopAsync(CancellationToken.None);
        await App.DisposeAsync();
        papers?.Dispose();
    }
}

/// <summary>Reads answers.</summary>
internal static class Answers
{
    /// <summary>The answer as a problem: it must be one, of this kind, with all that RFC 9457 names.</summary>
    public static async Task<JsonObject> MustBe(this HttpResponseMessage answer, ProblemType type)
    {
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(type.Status, (int)answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        var problem = JsonNode.Parse(text)!.AsObject();
        Assert.Equal(
            (type.Address, type.Title, type.Status),
            ((string?)problem["type"], (string?)problem["title"], (int?)problem["status"]));
        Assert.False(string.IsNullOrWhiteSpace((string?)problem["detail"]));
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        return problem;
    }

    public static string? Header(this HttpResponseMessage answer, string name) =>
        answer.Headers.TryGetValues(name, out var values) || answer.Content.Headers.TryGetValues(name, out values)
            ? string.Join(", ", values)
            : null;

    public static StringContent Json(this object value) => new(JsonSerializer.Serialize(value), Encoding.UTF8, "application/json");
}
