namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class WritingCommandsTests
{
    private static readonly string[] Now = ["--now", "2026-11-25T18:00:00Z"];

    [Fact]
    public async Task Outline_IsMarkdownOfTheEpisode()
    {
        var answer = await Shell.Run(["outline", Papers.Demo, "--episode", "ferry-e8", .. Now]);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.StartsWith("# A hull to knock on\n", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Letter_IsMarkdown()
    {
        var answer = await Shell.Run(["letter", Papers.Demo, .. Now]);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.StartsWith("# News from Harbour Shed\n", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fery-e8", "ferry-e8")]
    [InlineData("Ferry-E8", "ferry-e8")]
    public async Task Outline_UnknownEpisode_NamesTheNearest(string typed, string nearest)
    {
        var answer = await Shell.Run(["outline", Papers.Demo, "--episode", typed, .. Now]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains($"'{nearest}'", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outline_NoId_IsRefused()
    {
        var answer = await Shell.Run(["outline", Papers.Demo, "--episode", "a b", .. Now]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("'a b' can't be an id", answer.Error, StringComparison.Ordinal);
    }
}
