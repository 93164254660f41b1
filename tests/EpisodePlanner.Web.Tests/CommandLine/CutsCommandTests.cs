using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>"cuts": acceptance answers of the project's scenarios 2 and 9; the rest is our own contract.</summary>
public sealed class CutsCommandTests
{
    private const string Gorse = """
        {
          "format": 1, "name": "Gorse", "zone": "Etc/UTC",
          "settings": { "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 16 }] },
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [
            { "days": ["monday", "tuesday", "wednesday", "thursday", "friday"], "from": "18:00", "to": "22:00" }] } }],
          "series": [{ "id": "gorse", "name": "Gorse", "promise": { "longestSilenceDays": 21 },
            "work": ["wheels on, 20 h", "brakes, 25 h", "rides, 25 h"] }],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }],
          "uploads": [{ "series": "gorse", "date": "2027-03-06" }]
        }
        """;

    [Fact]
    public async Task Cuts_OfGorse_SaysWhatTheScenarioSays()
    {
        using var papers = new Papers();

        var answer = await Shell.Run(["cuts", papers.Write(Gorse), "--now", "2027-03-08T08:00:00Z"]);

        Assert.Equal(0, answer.Code);
        var says = string.Join(' ', answer.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("every promise holds; 32 h more work", says, StringComparison.Ordinal);
        Assert.Contains("Gorse: Fri 19 Mar (13 days), Sat 3 Apr (15 days), Sat 17 Apr (14 days)", says, StringComparison.Ordinal);
        Assert.Contains("at most 4 days beyond the promise instead of 11; 16 h more work", says, StringComparison.Ordinal);
        Assert.Contains("Out then: Fri 19 Mar (13 days), Tue 13 Apr (25 days, 4 beyond).", says, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cuts_ForPrograms_GivesChangesThatCanBeMade()
    {
        using var papers = new Papers();

        var answer = await Shell.Run(["cuts", papers.Write(Gorse), "--now", "2027-03-08T08:00:00Z", "--format", "json"]);

        var json = JsonNode.Parse(answer.Output)!;
        Assert.Equal(32m, json["cuts"]!["hoursMore"]!.GetValue<decimal>());
        Assert.Equal((11, 0), (json["cuts"]!["worstOver"]!["before"]!.GetValue<int>(), json["cuts"]!["worstOver"]!["then"]!.GetValue<int>()));
        Assert.Equal(16m, json["held"]!["hoursMore"]!.GetValue<decimal>());
        Assert.True(json["everyWay"]!.GetValue<bool>());
        Assert.Equal(3, json["series"]![0]!["places"]!.AsArray().Count);
        Assert.NotNull(json["cuts"]!["change"]);
    }

    [Fact]
    public async Task Cuts_OfNoSuchSeries_NamesThoseThereAre()
    {
        using var papers = new Papers();

        var answer = await Shell.Run(["cuts", papers.Write(Gorse), "--series", "gorze"]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("gorse", answer.Error, StringComparison.Ordinal);
    }
}
