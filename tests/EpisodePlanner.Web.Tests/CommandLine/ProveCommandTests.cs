using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>Scenario 2 of the project, cut twice, as a file: the dates and hours are its published answer, counted by hand.</summary>
public sealed class ProveCommandTests : IDisposable
{
    private const string Gorse = """
        {
          "format": 1, "name": "Gorse", "zone": "Etc/UTC",
          "settings": { "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 16 }] },
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [
            { "days": ["monday", "tuesday", "wednesday", "thursday", "friday"], "from": "18:00", "to": "22:00" }] } }],
          "series": [{ "id": "gorse", "name": "Gorse", "promise": { "longestSilenceDays": 21 },
            "work": ["wheels on, 20 h", "brakes, 25 h", "rides, 25 h"] }],
          "episodes": [
            { "id": "one", "title": "Wheels on", "series": "gorse", "milestones": ["wheels-on"] },
            { "id": "two", "title": "Brakes", "series": "gorse", "milestones": ["brakes"] }],
          "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }],
          "uploads": [{ "series": "gorse", "date": "2027-03-06" }]
        }
        """;

    private static readonly string[] Now = ["--now", "2027-03-08T08:00:00Z"];

    private readonly string file = Path.GetTempFileName();

    public ProveCommandTests() => File.WriteAllText(file, Gorse);

    public void Dispose() => File.Delete(file);

    [Fact]
    public async Task Prove_Brakes_SaysTheDateAndTheHours()
    {
        var answer = await Shell.Run(["prove", file, "--episode", "two", .. Now]);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.Contains(
            "No plan can publish “Brakes” before Saturday 3 April: 77 h of work of these hands come first, and 76 h are open "
            + "until Fri 2 Apr 17:59.",
            answer.Flat,
            StringComparison.Ordinal);
        Assert.Contains("no plan is better", answer.Flat, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("two", "2027-04-03")]
    [InlineData("gorse.rest", "2027-04-17")]
    public async Task Prove_AsJson_HasTheDates(string episode, string date)
    {
        var answer = await Shell.Run(["prove", file, "--episode", episode, "--format", "json", .. Now]);

        var proof = JsonNode.Parse(answer.Output)!;
        Assert.Equal(0, answer.Code);
        Assert.Equal((date, date, true), ((string)proof["earliestDay"]!, (string)proof["plannedDay"]!, (bool)proof["reached"]!));
        Assert.Equal("load", (string)proof["why"]!["kind"]!);
        Assert.Equal("maker", (string)Assert.Single(proof["why"]!["stations"]!.AsArray())!);
    }

    // 20 and 16 h one after the other: the first cut waits for nothing but its own work.
    [Fact]
    public async Task Prove_FirstCut_TellsItsChain()
    {
        var answer = await Shell.Run(["prove", file, "--episode", "one", .. Now]);

        Assert.Contains(
            "No plan can publish “Wheels on” before Friday 19 March: “wheels on” (20 h), “Wheels on: film the rest, edit, finish” "
            + "(16 h) follow each other",
            answer.Flat,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("three")]
    [InlineData("a b")]
    public async Task Prove_UnknownEpisode_NamesThoseThereAre(string episode)
    {
        var answer = await Shell.Run(["prove", file, "--episode", episode, .. Now]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("'one', 'two', 'gorse.rest'", answer.Error, StringComparison.Ordinal);
    }

    // By the published answer all three promises hold and each upload is on its earliest day, so nothing is late, no series is
    // silent too long, and the last tail ends with the last hour that counting leaves it: Friday 16 April, 22:00.
    [Fact]
    public async Task Prove_Whole_SaysThatNoPlanIsBetter()
    {
        var answer = await Shell.Run(["prove", file, "--whole", .. Now]);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Assert.Contains("This plan is the best there is: no plan is better.", answer.Flat, StringComparison.Ordinal);
        Assert.Contains("Nothing that has a date is late.", answer.Flat, StringComparison.Ordinal);
        Assert.Contains("no plan as good in the above ends sooner.", answer.Flat, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Prove_WholeAsJson_BoundsEachPartByThePlan()
    {
        var answer = await Shell.Run(["prove", file, "--whole", "--format", "json", .. Now]);

        var proof = JsonNode.Parse(answer.Output)!;
        Assert.True((bool)proof["best"]!);
        Assert.Equal(["late", "silence", "moves", "end"], proof["parts"]!.AsArray().Select(part => (string)part!["part"]!));
        Assert.All(proof["parts"]!.AsArray(), part => Assert.Equal((long)part!["reached"]!, (long)part["bound"]!));
    }

    // 61 h come before a slot that only 12 h are open before: the wheels can't be out on 12 March. Earliest is 19 March, a week on.
    [Fact]
    public async Task Prove_WholeWithADateThatCannotBeKept_SaysHowLateEveryPlanIs()
    {
        File.WriteAllText(file, Gorse.Replace("\"milestones\": [\"wheels-on\"]", "\"milestones\": [\"wheels-on\"], \"pinnedSlot\": \"2027-03-12T18:00\"", StringComparison.Ordinal));

        var answer = await Shell.Run(["prove", file, "--whole", .. Now]);

        Assert.Contains("no plan is late by less than that", answer.Flat, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("--whole", "--episode", "two")]
    public async Task Prove_NeitherOrBoth_IsRefused(params string[] what)
    {
        var answer = await Shell.Run(["prove", file, .. what, .. Now]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("either", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("many")]
    [InlineData("4000")]
    public async Task Prove_SecondsOutOfRange_IsRefused(string seconds)
    {
        var answer = await Shell.Run(["prove", file, "--episode", "two", "--seconds", seconds, .. Now]);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains($"'{seconds}'", answer.Error, StringComparison.Ordinal);
    }
}
