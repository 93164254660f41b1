using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"silences" on the demo. What is expected is our own contract; its gains are held by Planning.Tests.</summary>
public sealed class SilencesCommandTests
{
    private static readonly string[] Demo = ["silences", Papers.Demo, "--now", "2026-11-25T18:00:00Z"];

    // Nothing is out yet, so no silence counts.
    private const string Fresh = """{ "format": 1, "name": "Shed", "zone": "Etc/UTC", "series": [{ "id": "raft", "name": "Raft", "work": ["float, 1 h"] }] }""";

    [Fact]
    public async Task Silences_ForPeople_SayWhatWouldHelp()
    {
        var answer = await Shell.Run(Demo);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.Contains("Treadle Ferry", answer.Output.Split('\n'));
        Assert.Contains("wins ", answer.Output, StringComparison.Ordinal);
        Assert.Contains("rests openly until", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Silences_ForPrograms_GiveChangesThatCanBeMade()
    {
        var json = JsonNode.Parse((await Shell.Run([.. Demo, "--format", "json"])).Output)!;

        var silences = json["silences"]!.AsArray();
        Assert.NotEmpty(silences);
        Assert.All(silences, silence => Assert.True(silence!["daysOver"]!.GetValue<int>() > 0));
        Assert.All(
            silences.SelectMany(silence => silence!["helping"]!.AsArray()),
            remedy => Assert.True(remedy!["daysWon"]!.GetValue<int>() > 0 && remedy["change"] is not null));
    }

    [Fact]
    public async Task Silences_WhereEveryPromiseHolds_SaySo()
    {
        using var papers = new Papers();

        var answer = await Shell.Run(["silences", papers.Write(Fresh), "--now", "2026-11-25T18:00:00Z"]);

        Assert.Equal(0, answer.Code);
        Assert.Contains("None, as far as uploads are planned.", answer.Output, StringComparison.Ordinal);
    }
}
