using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"cadence" on the demo. What is expected is our own contract; its numbers are held by Planning.Tests.</summary>
public sealed class CadenceCommandTests
{
    private static readonly string[] Demo = ["cadence", Papers.Demo, "--now", "2026-11-25T18:00:00Z"];

    [Fact]
    public async Task Cadence_ForPeople_AnswersItsQuestions()
    {
        var answer = await Shell.Run(Demo);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        string[] headings = ["What hands can keep up", "Whether all promises can hold", "What each promise asks for", "If one of them rests openly"];
        Assert.Equal(headings, answer.Output.Split('\n').Where(line => line.Length > 0 && line[0] != ' '));
    }

    [Fact]
    public async Task Cadence_ForPrograms_LoadsAsAskedFor()
    {
        var usual = JsonNode.Parse((await Shell.Run([.. Demo, "--format", "json"])).Output)!;
        var half = JsonNode.Parse((await Shell.Run([.. Demo, "--loading", "50", "--format", "json"])).Output)!;

        Assert.Equal((0.85m, 0.5m), (usual["loading"]!.GetValue<decimal>(), half["loading"]!.GetValue<decimal>()));
        Assert.True(usual["uploadsAWeek"]!.GetValue<decimal>() > half["uploadsAWeek"]!.GetValue<decimal>());
        Assert.Equal(4, usual["series"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("101")]
    [InlineData("much")]
    public async Task Cadence_LoadingOutOfRange_SaysWhatWouldBeRight(string loading)
    {
        var answer = await Shell.Run([.. Demo, "--loading", loading]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("from 1 to 100", answer.Error, StringComparison.Ordinal);
    }
}
