using System.Net;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Serving;

public sealed class HealthTests : IDisposable
{
    private readonly Papers papers = new();

    private string Database => Path.Combine(papers.Folder, "episode-planner.db");

    public void Dispose() => papers.Dispose();

    [Fact]
    public async Task Health_OfASoundServer_IsLiveAndReady()
    {
        await using var planner = await RunningPlanner.Start();

        Assert.Equal(HttpStatusCode.OK, (await planner.Get(Health.Live)).StatusCode);
        var ready = await planner.Get(Health.Ready);
        Assert.Equal((HttpStatusCode.OK, "no-store"), (ready.StatusCode, ready.Header("Cache-Control")));
    }

    [Fact]
    public async Task Health_OverADamagedDatabase_SaysSoAndRecoversByItself()
    {
        await File.WriteAllTextAsync(Database, new string('x', 5_000), TestContext.Current.CancellationToken);
        await using var planner = await RunningPlanner.Start(folder: papers.Folder);

        Assert.Equal(HttpStatusCode.OK, (await planner.Get(Health.Live)).StatusCode);
        foreach (var path in (string[])[Health.Ready, "/api/v1/workshops", "/"])
        {
            var answer = await planner.Get(path);
            var problem = await answer.MustBe(ProblemTypes.StorageUnavailable);
            Assert.Contains("is no database", (string?)problem["detail"], StringComparison.Ordinal);
            Assert.NotNull(answer.Header("Retry-After"));
        }

        // In its place, because a connection that is kept still has the file that was there.
        await File.WriteAllBytesAsync(Database, [], TestContext.Current.CancellationToken);
        while ((await planner.Get(Health.Ready)).StatusCode != HttpStatusCode.OK)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal(HttpStatusCode.OK, (await planner.Get("/api/v1/workshops")).StatusCode);
    }

    [Fact]
    public async Task Health_OverAServerThatIsAway_SaysSoWithoutItsPassword()
    {
        await using var planner = await RunningPlanner.Start(
            adjust: settings => settings with { PostgreSql = "Host=127.0.0.1;Port=1;Username=planner;Password=hush;Database=planner" });

        var problem = await (await planner.Get(Health.Ready)).MustBe(ProblemTypes.StorageUnavailable);

        Assert.DoesNotContain("hush", problem.ToJsonString(), StringComparison.Ordinal);
    }
}
