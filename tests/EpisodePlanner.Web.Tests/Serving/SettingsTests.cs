using System.Text.RegularExpressions;
using EpisodePlanner.Web.Composition;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The settings, and what people read about them.</summary>
public sealed partial class SettingsTests
{
    private static SettingsResult Read(params (Setting Setting, string Value)[] values) => SettingsReader.Read(
        values.ToDictionary(value => value.Setting.Name, value => value.Value), isDemo: false);

    [Fact]
    public void Read_Nothing_ListensOnThisMachineAlone()
    {
        var settings = Read().Settings!;

        Assert.Equal([new ListenAddress("127.0.0.1", 5080)], settings.Addresses);
        Assert.True(Path.IsPathFullyQualified(settings.DataFolder));
        Assert.Equal("episode-planner", Path.GetFileName(settings.DataFolder));
        Assert.Null(settings.PostgreSql);
        Assert.Equal((TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(30)), (settings.StopAfter, settings.RequestTime));
    }

    [Fact]
    public void Read_Everything_IsAsSaid()
    {
        var settings = Read(
            (SettingsTable.Data, "/var/lib/planner"), (SettingsTable.PostgreSql, "Host=db;Password=secret"),
            (SettingsTable.Urls, "http://0.0.0.0:80; http://[::1]:0;http://localhost:81;http://*:82"), (SettingsTable.Hosts, "a.example; *.b.example"),
            (SettingsTable.Log, "json"), (SettingsTable.StopSeconds, "0"), (SettingsTable.RequestSeconds, "600")).Settings!;

        Assert.Equal("Host=db;Password=secret", settings.PostgreSql);
        Assert.Equal(
            ["http://0.0.0.0:80", "http://[::1]:0", "http://localhost:81", "http://*:82"],
            settings.Addresses.Select(address => address.ToString()));
        Assert.Equal(["a.example", "*.b.example"], settings.Hosts);
        Assert.True(settings.LogAsJson);
        Assert.Equal((TimeSpan.Zero, TimeSpan.FromMinutes(10)), (settings.StopAfter, settings.RequestTime));
        Assert.DoesNotContain("secret", settings.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("secret", settings.DataPlace, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Password=secret")]
    [InlineData("Host=db;Port=secret")]
    [InlineData("Host=db;Secret=secret")]
    [InlineData("secret")]
    public void Read_ConnectionThatIsNone_IsRefusedWithoutItsWords(string text)
    {
        var reason = Assert.Single(Read((SettingsTable.PostgreSql, text)).Reasons);

        Assert.DoesNotContain("secret", reason.Says, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Read_Empty_CountsAsNotSet(string value) => Assert.NotNull(Read(
        (SettingsTable.PostgreSql, value), (SettingsTable.Urls, value), (SettingsTable.Log, value), (SettingsTable.StopSeconds, value)).Settings);

    [Theory]
    [InlineData("http://127.0.0.1:65536")]
    [InlineData("http://127.0.0.1:5080/path")]
    [InlineData("http://me@127.0.0.1:5080")]
    [InlineData("http://+:5080")]
    [InlineData("http://*:x")]
    [InlineData("127.0.0.1:5080")]
    [InlineData("5080")]
    public void ListenAddress_Parse_RefusesWhatIsNone(string text) => Assert.Null(ListenAddress.Parse(text));

    [Fact]
    public async Task Table_IsWhatTheReadmeAndTheHelpSay()
    {
        var readme = await File.ReadAllTextAsync(Path.Combine(Papers.Root, "README.md"), TestContext.Current.CancellationToken);
        var help = (await Shell.Run("serve", "--help")).Flat;

        Assert.All(SettingsTable.All, setting =>
        {
            Assert.Contains($"| `{setting.Name}` | {setting.Default} | {setting.Meaning} |", readme, StringComparison.Ordinal);
            Assert.Contains(setting.Name, help, StringComparison.Ordinal);
            Assert.Contains(setting.Meaning.Replace("`", "", StringComparison.Ordinal), help, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("docker-compose.yml")]
    [InlineData("deploy/Dockerfile")]
    [InlineData("deploy/episode-planner.service")]
    public async Task Settings_ThatFilesName_Exist(string file)
    {
        var text = await File.ReadAllTextAsync(Path.Combine(Papers.Root, file), TestContext.Current.CancellationToken);

        Assert.All(
            Named().Matches(text).Select(match => match.Value).Where(name => !name.StartsWith("EPISODE_PLANNER_TEST_", StringComparison.Ordinal)),
            name => Assert.Contains(SettingsTable.All, setting => setting.Name == name));
    }

    [GeneratedRegex("EPISODE_PLANNER_[A-Z_]+")]
    private static partial Regex Named();
}
