namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"import" and "export" on one database.</summary>
public sealed class TransferCommandTests : IDisposable
{
    private readonly Papers papers = new();

    public void Dispose() => papers.Dispose();

    private Task<Answer> Run(params string[] arguments) => Shell.RunWith(
        new Dictionary<string, string> { ["EPISODE_PLANNER_DATA"] = Path.Combine(papers.Folder, "data") }, arguments);

    private static string IdIn(Answer answer) => answer.Lines.Single(line => line.Contains("Its id: ", StringComparison.Ordinal)).Split(": ")[1];

    private static string Reread(string file) =>
        System.Text.Encoding.UTF8.GetString(Planning.Files.WorkshopFile.Write(Planning.Files.WorkshopFile.Read(File.ReadAllBytes(file)).Thing!));

    [Fact]
    public async Task Import_ThenExport_GivesTheCanonicalFile()
    {
        var imported = await Run("import", Papers.Demo);
        var exported = await Run("export");

        Assert.Equal((0, ""), (imported.Code, imported.Error));
        Assert.Contains("“Harbour Shed” is kept in", imported.Flat, StringComparison.Ordinal);
        Assert.Contains("5 series", imported.Flat, StringComparison.Ordinal);
        Assert.Equal((0, ""), (exported.Code, exported.Error));
        Assert.Equal(Reread(Papers.Demo), exported.Output);
    }

    [Fact]
    public async Task Export_ToAFile_PutsItInThePlaceOfTheOld()
    {
        await Run("import", Papers.Demo);
        var file = papers.Write("old");

        var answer = await Run("export", "--output", file);

        Assert.Equal((0, "", ""), (answer.Code, answer.Output, answer.Error));
        Assert.Equal(Reread(Papers.Demo), await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
        Assert.Equal(["data", "workshop.json"], new DirectoryInfo(papers.Folder).EnumerateFileSystemInfos().Select(info => info.Name).Order());
    }

    [Fact]
    public async Task Export_OfSeveral_AsksWhichOne()
    {
        var first = IdIn(await Run("import", Papers.Demo));
        var second = IdIn(await Run("import", Papers.FirstLines));

        var unsaid = await Run("export");
        var said = await Run("export", "--workshop", second);
        var wrong = await Run("export", "--workshop", "nobody");

        Assert.Equal((2, ""), (unsaid.Code, unsaid.Output));
        Assert.All([first, second, "Harbour Shed", "First lines"], word => Assert.Contains(word, unsaid.Error, StringComparison.Ordinal));
        Assert.Equal(0, said.Code);
        Assert.Contains("\"name\": \"First lines\"", said.Output, StringComparison.Ordinal);
        Assert.Equal(2, wrong.Code);
        Assert.Contains("There is no workshop 'nobody'", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_OfNone_SaysWhatToDo()
    {
        var answer = await Run("export");

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("import FILE", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_IntoAFolderThatIsNotThere_IsRefused()
    {
        await Run("import", Papers.FirstLines);

        var answer = await Run("export", "--output", Path.Combine(papers.Folder, "none", "a.json"));

        Assert.Equal(2, answer.Code);
        Assert.Contains("no such folder", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_BadFile_TellsEveryReasonAndKeepsNothing()
    {
        var file = papers.Workshop("""[{ "id": "a", "name": "", "stages": [{ "kind": "attended", "hours": -1, "colour": "red" }] }]""");

        var answer = await Run("import", file);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.All(
            ["$.tasks[0].name", "$.tasks[0].stages[0].hours", "$.tasks[0].stages[0].colour"],
            place => Assert.Contains($"{file}: {place}", answer.Error, StringComparison.Ordinal));
        Assert.Contains("There is no workshop yet", (await Run("export")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_IntoADatabaseThatIsNone_SaysSo()
    {
        var folder = Directory.CreateDirectory(Path.Combine(papers.Folder, "data"));
        await File.WriteAllTextAsync(
            Path.Combine(folder.FullName, "episode-planner.db"), new string('x', 5_000), TestContext.Current.CancellationToken);

        var answer = await Run("import", Papers.FirstLines);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("is no database", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Demo_HasADatabaseOfItsOwn()
    {
        await Run("import", Papers.FirstLines, "--demo");

        Assert.Equal(2, (await Run("export")).Code);
        Assert.Equal(0, (await Run("export", "--demo")).Code);
    }
}
