using System.Diagnostics;
using System.Text.Json.Nodes;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>What the real process writes while its database is away.</summary>
public sealed class LogTests
{
    private const string Password = "hush-1829";

    [Fact]
    public async Task Json_IsAnObjectALineWithoutSecrets_AndAStopIsGraceful()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such signal.");
        using var papers = new Papers();
        using var process = Start(papers.Folder);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var lines = new List<string>();
        while (await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            lines.Add(line);
            if (line.Contains("It is not ready yet", StringComparison.Ordinal))
            {
                using var kill = Process.Start("/bin/sh", ["-c", $"kill -TERM {process.Id}"]);
                await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
            }
        }

        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal((0, ""), (process.ExitCode, await error));
        Assert.All(lines, line => Assert.NotNull(JsonNode.Parse(line)!["Message"]));
        Assert.Contains(lines, line => line.Contains("listens at http://127.0.0.1:", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains(Password, StringComparison.Ordinal));
    }

    private static Process Start(string folder)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "EpisodePlanner.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program]) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["EPISODE_PLANNER_DATA"] = folder;
        start.Environment["EPISODE_PLANNER_URLS"] = "http://127.0.0.1:0";
        start.Environment["EPISODE_PLANNER_LOG"] = "json";
        start.Environment["EPISODE_PLANNER_POSTGRES"] = $"Host=127.0.0.1;Port=1;Username=planner;Password={Password};Database=planner";
        return Process.Start(start)!;
    }
}
