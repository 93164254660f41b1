using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Apps;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>What the Dockerfile builds, made and run by hand.</summary>
public abstract class PublishedAppSuite(PublishedApp published, ITestDatabases databases)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Published_StartsServesAndStops()
    {
        await using var database = await databases.New();
        var program = await published.Program;
        var before = published.Look();
        await using var app = await RunningApp.Start(program, AppSettings.For(database), published.Folder, Stop);

        var answer = await app.Client.GetStringAsync(new Uri("/api/v1/workshops", UriKind.Relative), Stop);

        Assert.StartsWith("{", answer, StringComparison.Ordinal);
        Assert.Equal(0, await app.Stop(Stop));
        Assert.Equal(before, published.Look());
    }

    [Fact]
    public async Task Published_AnswersItsOwnHealthCheck()
    {
        await using var database = await databases.New();
        var program = await published.Program;
        await using var app = await RunningApp.Start(program, AppSettings.For(database), published.Folder, Stop);

        var check = await Tool.Run("dotnet", [program, "health", "--url", $"{app.Client.BaseAddress}"]);

        Assert.True(check.Code == 0, check.Error);
    }
}

/// <summary>As a single program on a maker's machine.</summary>
public sealed class SqlitePublishedAppTests(PublishedApp published, SqliteDatabases databases)
    : PublishedAppSuite(published, databases);

/// <summary>As in the compose file.</summary>
public sealed class PostgreSqlPublishedAppTests(PublishedApp published, PostgreSqlDatabases databases)
    : PublishedAppSuite(published, databases);
