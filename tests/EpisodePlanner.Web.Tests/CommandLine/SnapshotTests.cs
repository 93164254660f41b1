namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>The text of the demo as a maker reads it. EPISODEPLANNER_UPDATE=1 writes it anew; read it before keeping it.</summary>
public sealed class SnapshotTests
{
    private static readonly string Kept = Path.Combine(
        Papers.Root, "tests", "EpisodePlanner.Web.Tests", "Snapshots", "plan.txt");

    [Fact]
    public async Task Plan_DemoAtItsAnchor_ReadsAsKept()
    {
        var answer = await Shell.Run("plan", Papers.Demo, "--now", "2026-11-25T18:00:00Z");
        if (Environment.GetEnvironmentVariable("EPISODEPLANNER_UPDATE") == "1")
        {
            await File.WriteAllTextAsync(Kept, answer.Output, TestContext.Current.CancellationToken);
        }

        Assert.Equal(await File.ReadAllTextAsync(Kept, TestContext.Current.CancellationToken), answer.Output);
    }
}
