using EpisodePlanner.Data;
using EpisodePlanner.Data.PostgreSql;
using EpisodePlanner.Data.Sqlite;
using EpisodePlanner.Databases;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

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

    public IServiceProvider Services => app.Services;

    public static async Task<ApiServer> Start(ITestDatabases databases)
    {
        var (database, clock) = (await databases.New(), new SetClock());
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddSingleton<TimeProvider>(clock).AddProblems().AddApi().AddStorage(_ => Over(database));
        var app = builder.Build();
        app.UseProblems();
        app.MapApi();
        await app.Services.GetRequiredService<Storage>().Prepare(TestContext.Current.CancellationToken);
        await app.StartAsync(TestContext.Current.CancellationToken);
        return new ApiServer(app, database, clock);
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await app.DisposeAsync();
        await database.DisposeAsync();
    }

    private static Storage Over(ITestDatabase database) => database.Kind == DatabaseKind.PostgreSql
        ? new PostgreSqlStorage(database.ConnectionString)
        : new SqliteStorage(Path.Combine(database.Folder, "episode-planner.db"));
}
