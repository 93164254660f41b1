using System.Text.Json.Nodes;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The demo over several starts.</summary>
public sealed class DemoTests : IDisposable
{
    private static readonly DateTimeOffset Later = Shell.Anchor.AddDays(15);
    private readonly Papers papers = new();

    public void Dispose() => papers.Dispose();

    private Task<RunningPlanner> Start(DateTimeOffset now) => RunningPlanner.Start(
        adjust: settings => settings with { IsDemo = true }, clock: new StillClock(now), folder: papers.Folder);

    private static async Task<JsonNode> Only(RunningPlanner planner)
    {
        var answer = await planner.Client.GetStringAsync("/api/v1/workshops", TestContext.Current.CancellationToken);
        return Assert.Single(JsonNode.Parse(answer)!["items"]!.AsArray())!;
    }

    private static async Task<string> Anchor(RunningPlanner planner)
    {
        var path = $"/api/v1/workshops/{(await Only(planner))["id"]}/export";
        return (string)JsonNode.Parse(await planner.Client.GetStringAsync(path, TestContext.Current.CancellationToken))!["demo"]!["anchor"]!;
    }

    [Fact]
    public async Task Untouched_InTheSameWeek_StaysWhereItIs()
    {
        string before;
        await using (var first = await Start(Shell.Anchor))
        {
            before = (string)(await Only(first))["id"]!;
        }

        await using var second = await Start(Shell.Anchor.AddDays(6));

        Assert.Equal(before, (string?)(await Only(second))["id"]);
    }

    [Fact]
    public async Task Untouched_Later_IsReplacedByOneOfToday()
    {
        await using (var first = await Start(Shell.Anchor))
        {
            Assert.Equal("2026-11-25", await Anchor(first));
        }

        await using var second = await Start(Later);

        Assert.Equal("2026-12-09", await Anchor(second));
        Assert.Equal(1, (long?)(await Only(second))["version"]);
    }

    [Fact]
    public async Task Changed_Later_IsKeptAsItIs()
    {
        await using (var first = await Start(Shell.Anchor))
        {
            var path = $"/api/v1/workshops/{(await Only(first))["id"]}";
            var answer = await first.Send(
                HttpMethod.Put, path, new { name = "My own shed", zone = "Europe/Dublin" }.Json(), ("If-Match", "\"1\""));
            Assert.True(answer.IsSuccessStatusCode);
        }

        await using var second = await Start(Later);

        Assert.Equal("My own shed", (string?)(await Only(second))["name"]);
        Assert.Equal("2026-11-25", await Anchor(second));
    }
}
