using System.Text.RegularExpressions;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>The compose file: accepted by the program that runs it, and as closed as it can be.</summary>
public sealed partial class ComposeTests
{
    private const int Services = 2;
    private static readonly string Text = File.ReadAllText(Path.Combine(Papers.Root, "docker-compose.yml"));

    [Fact]
    public async Task Config_IsAccepted()
    {
        var answer = await Config("secret");

        Assert.True(answer.Code == 0, answer.Error);
        Assert.Contains("Password=secret", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Config_WithoutAPassword_SaysWhereToWriteIt()
    {
        var answer = await Config(null);

        Assert.NotEqual(0, answer.Code);
        Assert.Contains("write it into .env", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("    read_only: true\n")]
    [InlineData("    cap_drop: [ALL]\n")]
    [InlineData("    security_opt: [\"no-new-privileges:true\"]\n")]
    [InlineData("    restart: unless-stopped\n")]
    [InlineData("    stop_grace_period: ")]
    public void Services_AllHave(string line) => Assert.Equal(Services, Regex.Count(Text, Regex.Escape(line)));

    [Fact]
    public void Ports_ArePublishedOnLoopbackOnly()
    {
        var ports = Published().Matches(Text);

        Assert.Single(ports);
        Assert.All(ports, port => Assert.StartsWith("127.0.0.1:", port.Groups[1].Value, StringComparison.Ordinal));
    }

    [Fact]
    public void App_WaitsForAHealthyDatabase() =>
        Assert.Contains("condition: service_healthy", Text, StringComparison.Ordinal);

    private static async Task<Answer> Config(string? password)
    {
        // A developer's own .env stays out of it.
        using var papers = new Papers();
        string[] arguments = ["--env-file", papers.Write(""), "config"];
        var program = await Program();
        return await Tool.Run(program[0], [.. program[1..], .. arguments], ("POSTGRES_PASSWORD", password));
    }

    private static async Task<string[]> Program()
    {
        if (Tool.Exists("docker-compose"))
        {
            return ["docker-compose"];
        }

        var plugged = Tool.Exists("docker") && (await Tool.Run("docker", ["compose", "version"])).Code == 0;
        Tool.Need(plugged, "docker-compose");
        return ["docker", "compose"];
    }

    [GeneratedRegex(@"- ""(\S*:5080)""\n")]
    private static partial Regex Published();
}
