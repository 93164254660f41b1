using EpisodePlanner.Databases;
using EpisodePlanner.Web.Composition;
using Microsoft.AspNetCore.Builder;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>The API on a port of its own, over a database of its own, with a clock that the test sets.</summary>
internal sealed class ApiServer : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly ITestDatabase database;
    private readonly HttpClient client;

    private ApiServer(WebApplication app, ITestDatabase database, SetClock clock)
    {
        (this.app, this.database, Clock) = (app, database, clock);
        client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        Api = new ApiClient(client);
    }

    public SetClock Clock { get; }

    public ApiClient Api { get; }

    public static async Task<ApiServer> Start(ITestDatabases databases)
    {
        var (database, clock) = (await databases.New(), new SetClock());
        var settings = new ServerSettings
        {
            DataFolder = database.Folder,
            PostgreSql = database.Kind == DatabaseKind.PostgreSql ? database.ConnectionString : null,
            Addresses = [new ListenAddress("127.0.0.1", 0)],
        };
        var app = PlannerServer.Build(settings, clock);
        await app.StartAsync(TestContext.Current.CancellationToken);
        Assert.Null(await PlannerServer.Prepared(app));
        return new ApiServer(app, database, clock);
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        await database.DisposeAsync();
    }
}
