using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>The unit file: sound where systemd can be asked, and closed.</summary>
public sealed class SystemdUnitTests
{
    private const string Program = "/opt/episode-planner/EpisodePlanner.Web";
    private static readonly string[] Lines =
        File.ReadAllLines(Path.Combine(Papers.Root, "deploy", "episode-planner.service"));

    [Fact]
    public void Lines_AreSectionsCommentsOrSettings() => Assert.All(
        Lines.Where(line => line.Length > 0 && line[0] != '#'),
        line => Assert.Matches(@"^(\[[A-Z]\w+\]|[A-Z]\w+=.*)$", line));

    [Theory]
    [InlineData($"ExecStart={Program}")]
    [InlineData("DynamicUser=yes")]
    [InlineData("StateDirectory=episode-planner")]
    [InlineData("Restart=on-failure")]
    [InlineData("TimeoutStopSec=40s")]
    [InlineData("CapabilityBoundingSet=")]
    [InlineData("NoNewPrivileges=yes")]
    [InlineData("ProtectSystem=strict")]
    [InlineData("ProtectHome=yes")]
    [InlineData("PrivateTmp=yes")]
    [InlineData("SystemCallFilter=@system-service")]
    [InlineData("WantedBy=multi-user.target")]
    public void Unit_Says(string line) => Assert.Contains(line, Lines);

    [Fact]
    public async Task Verify_FindsNothing()
    {
        Assert.SkipUnless(Tool.Exists("systemd-analyze"), "There is no systemd here; the other tests read the unit.");
        using var papers = new Papers();
        var unit = Path.Combine(papers.Folder, "episode-planner.service");
        // It would miss the program, which is not installed here.
        var there = Lines.Select(line => line.Replace(Program, "/bin/true", StringComparison.Ordinal));
        await File.WriteAllLinesAsync(unit, there, TestContext.Current.CancellationToken);

        var answer = await Tool.Run("systemd-analyze", ["verify", unit]);

        Assert.Equal((0, "", ""), (answer.Code, answer.Output, answer.Error));
    }
}
