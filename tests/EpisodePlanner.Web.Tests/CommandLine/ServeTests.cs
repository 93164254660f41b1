using System.Net;
using System.Net.Sockets;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class ServeTests : IDisposable
{
    private readonly Papers papers = new();

    public void Dispose() => papers.Dispose();

    private Dictionary<string, string> With(string name, string value) =>
        new() { ["EPISODE_PLANNER_DATA"] = Path.Combine(papers.Folder, "data"), [$"EPISODE_PLANNER_{name}"] = value };

    [Fact]
    public async Task NoCommand_ServesAndSaysWhereItListensAndKeepsItsData()
    {
        var folder = Path.Combine(papers.Folder, "a", "b");
        await using var command = await RunningCommand.Start(folder);

        var ready = await command.Client.GetAsync("/health/ready", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, ready.StatusCode);
        Assert.Contains($"The data is in {Path.Combine(folder, "episode-planner.db")}.", command.Said, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "episode-planner.db")));
        Assert.Equal(0, await command.Stop());
    }

    [Theory]
    [InlineData("--demo")]
    [InlineData("serve", "--demo")]
    public async Task Demo_ShowsTheDemoFromADatabaseOfItsOwn(params string[] arguments)
    {
        await using var command = await RunningCommand.Start(papers.Folder, arguments);

        var page = await command.Client.GetStringAsync("/", TestContext.Current.CancellationToken);

        Assert.Contains("Harbour Shed", page, StringComparison.Ordinal);
        Assert.Contains("Next upload Friday 27 November, 17:00", page, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(papers.Folder, "demo.db")));
        Assert.False(File.Exists(Path.Combine(papers.Folder, "episode-planner.db")));
    }

    [Fact]
    public async Task DataFolder_ThatIsMade_IsItsOwnersAlone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such modes.");
        var folder = Path.Combine(papers.Folder, "own");
        await using var command = await RunningCommand.Start(folder);

        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute,
            OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(folder));
    }

    [Fact]
    public async Task BusyPort_SaysWhatWouldBeRight()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var url = $"http://{listener.LocalEndpoint}";

        var answer = await Shell.RunWith(With("URLS", url));

        Refused(answer, $"EPISODE_PLANNER_URLS: {url} is taken", "another port");
    }

    [Fact]
    public async Task AddressOfAnotherMachine_SaysWhatWouldBeRight() =>
        Refused(await Shell.RunWith(With("URLS", "http://192.0.2.1:5080")), "EPISODE_PLANNER_URLS: ", "no address of this machine");

    [Fact]
    public async Task FolderThatIsAFile_SaysWhatWouldBeRight()
    {
        var file = papers.Write("{}");

        Refused(await Shell.RunWith(With("DATA", file)), $"EPISODE_PLANNER_DATA: The folder '{file}'", "another one");
    }

    [Fact]
    public async Task FolderBelowAFile_SaysWhatWouldBeRight()
    {
        var below = Path.Combine(papers.Write("{}"), "data");

        Refused(await Shell.RunWith(With("DATA", below)), $"EPISODE_PLANNER_DATA: The folder '{below}'");
    }

    [Fact]
    public async Task WrongSettings_AreToldAtOnce()
    {
        var settings = With("URLS", "https://127.0.0.1:5080; http://shed:80");
        settings[SettingsTable.Log.Name] = "xml";
        settings[SettingsTable.StopSeconds.Name] = "1000";

        Refused(
            await Shell.RunWith(settings),
            "EPISODE_PLANNER_URLS: 'https://127.0.0.1:5080'", "EPISODE_PLANNER_URLS: 'http://shed:80'",
            "EPISODE_PLANNER_LOG: 'xml'", "EPISODE_PLANNER_STOP_SECONDS: '1000'");
    }

    [Fact]
    public async Task MisspeltSetting_IsTold()
    {
        var settings = With("LOG", "xml");
        settings["EPISODE_PLANNER_HOST"] = "shed.example";

        Refused(await Shell.RunWith(settings), "EPISODE_PLANNER_HOST is no setting");
    }

    private static void Refused(Answer answer, params string[] words)
    {
        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.All(words, word => Assert.Contains(word, answer.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", answer.Error, StringComparison.Ordinal);
    }
}
