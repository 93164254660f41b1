using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>The Dockerfile: its one step is the script that <see cref="PublishedAppSuite"/> runs.</summary>
public sealed class DockerfileTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Papers.Root, "deploy", "Dockerfile"));

    [Fact]
    public void Build_IsThePublishScript() => Assert.Equal(
        ["RUN bash deploy/publish /app"],
        Lines.TakeWhile(line => !line.Contains("/aspnet:", StringComparison.Ordinal)).Where(IsStep("RUN")));

    [Fact]
    public void App_IsNotRunByRoot()
    {
        var user = Assert.Single(Lines, line => IsStep("USER")(line));

        Assert.Equal("USER $APP_UID", user);
        Assert.True(Array.IndexOf(Lines, user) < Array.FindIndex(Lines, line => IsStep("ENTRYPOINT")(line)));
    }

    [Fact]
    public async Task HealthCheck_IsACommandOfTheApp()
    {
        Assert.Contains(Lines, line => line.Contains("\"health\", \"--url\"", StringComparison.Ordinal));
        Assert.Equal(0, (await Shell.Run("health", "--help")).Code);
    }

    [Fact]
    public void Context_HoldsWhatThePublishReads()
    {
        var let = File.ReadAllLines(Path.Combine(Papers.Root, ".dockerignore"))
            .Where(line => line.StartsWith('!'))
            .Select(line => line[1..]);

        Assert.All(let, path => Assert.True(Path.Exists(Path.Combine(Papers.Root, path)), path));
        Assert.Empty(Directory.EnumerateFiles(Papers.Root, "*.props").Select(Path.GetFileName).Except(let));
    }

    private static Func<string, bool> IsStep(string step) => line => line.StartsWith(step + " ", StringComparison.Ordinal);
}
