using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"why" on the demo. What is expected is our own contract; its facts are held against cold plans in Planning.Tests.</summary>
public sealed class WhyCommandTests
{
    private static readonly string[] Ferry = ["why", Papers.Demo, "--episode", "ferry-e8", "--now", "2026-11-25T18:00:00Z"];

    [Fact]
    public async Task Why_ForPeople_AnswersItsFourQuestions()
    {
        var answer = await Shell.Run(Ferry);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        string[] headings = ["“A hull to knock on” (Treadle Ferry)", "What would bring it forward", "What can wait a day", "What is contested until then"];
        Assert.Equal(headings, answer.Output.Split('\n').Where(line => line.Length > 0 && line[0] != ' '));
        Assert.Contains("because it is ready", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Why_ForPrograms_GivesChangesThatCanBeMade()
    {
        var answer = await Shell.Run([.. Ferry, "--format", "json"]);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        var document = JsonNode.Parse(answer.Output)!;
        Assert.Equal("ferry-e8", document["episode"]!.GetValue<string>());
        var tried = document["whatIfs"]!.AsArray();
        Assert.Contains(tried, one => one!["kind"]!.GetValue<string>() == "openDay");
        Assert.All(tried, one => Assert.NotNull(one!["change"]!["kind"]));
        Assert.Equal(
            tried.Select(one => one!["daysWon"]?.GetValue<int>() ?? 0).OrderDescending(), tried.Select(one => one!["daysWon"]?.GetValue<int>() ?? 0));
        Assert.NotEmpty(document["dayLater"]!.AsArray());
        Assert.NotEmpty(document["contests"]!.AsArray());
    }

    [Theory]
    [InlineData("fery-e8")]
    [InlineData("a b")]
    public async Task Why_UnknownEpisode_NamesThoseThereAre(string typed)
    {
        var answer = await Shell.Run(["why", Papers.Demo, "--episode", typed, "--now", "2026-11-25T18:00:00Z"]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("'ferry-e8'", answer.Error, StringComparison.Ordinal);
    }
}
