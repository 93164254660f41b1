using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"suppose" on the demo. What is expected is our own contract; its dates are held by Planning.Tests.</summary>
public sealed class SupposeCommandTests
{
    private const string Rest = """{ "kind": "series", "id": "ferry", "to": {{series}} }""";

    [Fact]
    public async Task Suppose_ForPeople_SaysOnlyWhatDiffers()
    {
        using var papers = new Papers();

        var answer = await Run(papers.Write(Resting()));

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.StartsWith("Suppose: workshop", answer.Output, StringComparison.Ordinal);
        Assert.Contains("Uploads:", answer.Output, StringComparison.Ordinal);
        Assert.Contains("(Treadle Ferry)", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Suppose_TwoFilesForPrograms_StandBesideTheSamePlan()
    {
        using var papers = new Papers();
        var file = papers.Write(Resting());

        var json = JsonNode.Parse((await Run(file, file, "--format", "json")).Output)!;

        var supposed = json["supposed"]!.AsArray();
        Assert.Equal(2, supposed.Count);
        Assert.Equal(supposed[0]!.ToJsonString(), supposed[1]!.ToJsonString());
        Assert.NotEmpty(supposed[0]!["uploads"]!.AsArray());
        Assert.Contains(supposed[0]!["silences"]!.AsArray(), silence => silence!["series"]?.GetValue<string>() == "ferry");
    }

    [Fact]
    public async Task Suppose_NothingThatMatters_SaysSo()
    {
        using var papers = new Papers();

        var answer = await Run(papers.Write("""{ "kind": "batch", "changes": [] }"""));

        Assert.Contains("Nothing differs from the plan", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "kind": "series", "id": "ferry", "remove": true }""")]
    [InlineData("""{ "kind": "no-such-kind", "id": "ferry", "remove": true }""")]
    [InlineData("not JSON")]
    public async Task Suppose_AChangeThatCannotBe_IsRefusedWithReasons(string change)
    {
        using var papers = new Papers();
        var file = papers.Write(change);

        var answer = await Run(file);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains(file, answer.Error, StringComparison.Ordinal);
    }

    private static string Resting()
    {
        var series = JsonNode.Parse(File.ReadAllText(Papers.Demo))!["series"]!.AsArray().Single(one => one!["id"]!.GetValue<string>() == "ferry")!;
        series["state"] = "resting";
        series["restingUntil"] = "2027-03-01";
        return Rest.Replace("{{series}}", series.ToJsonString(), StringComparison.Ordinal);
    }

    private static Task<Answer> Run(params string[] changes) =>
        Shell.Run(["suppose", Papers.Demo, .. changes, "--now", "2026-11-25T18:00:00Z"]);
}
