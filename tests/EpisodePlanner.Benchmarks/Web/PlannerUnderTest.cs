using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Data;
using EpisodePlanner.Databases;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Composition;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace EpisodePlanner.Benchmarks.Web;

/// <summary>The real server in this process, with one generated workshop on SQLite.</summary>
internal sealed class PlannerUnderTest : IAsyncDisposable
{
    private readonly ServerSettings settings;
    private readonly ITestDatabase database;
    private readonly WebApplication app;

    private PlannerUnderTest(ServerSettings settings, ITestDatabase database, WebApplication app)
    {
        (this.settings, this.database, this.app) = (settings, database, app);
        Client = new HttpClient(new SocketsHttpHandler { UseProxy = false, AllowAutoRedirect = false }) { BaseAddress = new Uri(app.Urls.Single()) };
    }

    public HttpClient Client { get; }

    /// <summary>The workshop's path in the API.</summary>
    public string Workshop { get; private set; } = "";

    /// <summary>The path of its pages.</summary>
    public string Desk => Workshop.Replace("/api/v1/workshops/", "/w/", StringComparison.Ordinal);

    /// <summary>With a generated workshop.</summary>
    public static Task<PlannerUnderTest> Start(int tasks, int seed) =>
        Start(WorkshopFile.Write(GeneratedWorkshop.Make(tasks, seed)), GeneratedWorkshop.PlannedAt);

    /// <summary>With a workshop of a file, at a moment.</summary>
    public static async Task<PlannerUnderTest> Start(byte[] file, Instant now)
    {
        var database = await new SqliteDatabases().New();
        var settings = new ServerSettings { DataFolder = database.Folder, Addresses = [new ListenAddress("127.0.0.1", 0)] };
        var app = PlannerServer.Build(settings, new StandingClock(now));
        await app.StartAsync();
        if (await PlannerServer.Prepared(app) is { } trouble)
        {
            throw trouble;
        }

        var planner = new PlannerUnderTest(settings, database, app);
        using var answer = await planner.Send(HttpMethod.Post, "/api/v1/imports", Encoding.UTF8.GetString(file));
        planner.Workshop = answer.Headers.Location!.ToString();
        return planner;
    }

    /// <summary>Sends a request that must succeed.</summary>
    public async Task<HttpResponseMessage> Send(HttpMethod method, string path, string? body = null, string? ifMatch = null)
    {
        using var request = new HttpRequestMessage(method, path);
        if (body is not null)
        {
            request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        }

        if (ifMatch is not null)
        {
            request.Headers.TryAddWithoutValidation("If-Match", ifMatch);
        }

        var answer = await Client.SendAsync(request);
        return answer.IsSuccessStatusCode
            ? answer
            : throw new InvalidOperationException($"{method} {path}: {(int)answer.StatusCode} {await answer.Content.ReadAsStringAsync()}");
    }

    public async Task<byte[]> Read(string path)
    {
        using var answer = await Send(HttpMethod.Get, path);
        return await answer.Content.ReadAsByteArrayAsync();
    }

    public async Task<JsonObject> ReadJson(string path) => JsonNode.Parse(await Read(path))!.AsObject();

    /// <summary>How long it takes to load the workshop into a store that has never seen it.</summary>
    public async Task<TimeSpan> LoadCold()
    {
        await using var cold = PlannerServer.Build(settings, new StandingClock(GeneratedWorkshop.PlannedAt));
        await cold.Services.GetRequiredService<Storage>().Prepare(CancellationToken.None);
        var store = cold.Services.GetRequiredService<WorkshopStore>();
        var begun = Stopwatch.GetTimestamp();
        await store.Find(new Id(Workshop.Split('/')[^1]), CancellationToken.None);
        return Stopwatch.GetElapsedTime(begun);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        await database.DisposeAsync();
    }

    private sealed class StandingClock(Instant now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now.ToDateTimeOffset();
    }
}
