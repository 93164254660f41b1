using System.Collections.Concurrent;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>One server for the tests of a class that change nothing in it, with endpoints that do what a test says.</summary>
public sealed class GuardedPlanner : IAsyncLifetime
{
    /// <summary>An endpoint for every method.</summary>
    public const string Path = "/api/v1/test";

    /// <summary>An endpoint that takes a whole workshop.</summary>
    public const string ImportPath = "/api/v1/test-import";

    private static readonly string[] Methods = ["GET", "HEAD", "OPTIONS", "POST", "PUT", "PATCH", "DELETE"];
    private readonly ConcurrentDictionary<string, Func<IResult>> handlers = new();

    internal RunningPlanner Planner { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Planner = await RunningPlanner.Start(
        Map, settings => settings with { Hosts = ["shed.example", "*.bench.example", "[fd00::7]"] });

    public ValueTask DisposeAsync() => Planner.DisposeAsync();

    /// <summary>What the server makes of what an endpoint does.</summary>
    internal Task<HttpResponseMessage> AnswerOf(Func<IResult> handler)
    {
        var key = $"h{handlers.Count}-{TestContext.Current.Test?.UniqueID}";
        handlers[key] = handler;
        return Planner.Get($"{Path}/{key}");
    }

    private static async Task<long> Length(HttpRequest request, CancellationToken stop)
    {
        var bytes = new MemoryStream();
        await request.Body.CopyToAsync(bytes, stop);
        return bytes.Length;
    }

    private void Map(WebApplication app)
    {
        app.MapMethods(Path, Methods, Length);
        app.MapPost(ImportPath, Length).TakesWorkshops();
        app.MapGet($"{Path}/{{key}}", (string key) => handlers[key]());
        app.MapPut($"{Path}-put", () => "done");
        app.MapPost($"{Path}-json", (Dictionary<string, string> body) => body.Count);
        app.MapGet($"{Path}-own", () => "own").WithMetadata(new ContentPolicy("default-src 'self'"));
    }
}
