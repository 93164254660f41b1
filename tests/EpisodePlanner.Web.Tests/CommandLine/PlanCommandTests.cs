namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class PlanCommandTests
{
    private static readonly string[] Demo = ["plan", Papers.Demo, "--now", "2026-11-25T18:00:00Z"];

    [Fact]
    public async Task Plan_Demo_AnswersInOrder()
    {
        var answer = await Shell.Run(Demo);

        Assert.Equal((0, ""), (answer.Code, answer.Error));
        string[] headings =
        [
            "Next upload",
            "Then",
            "Silences beyond a promise",
            "The one next thing",
            "What must start tonight",
            "What must be filmed first",
            "What was assumed",
        ];
        Assert.Equal(headings, answer.Lines.Where(headings.Contains));
    }

    [Theory]
    [InlineData("harbour-shed.json")]
    [InlineData("first-lines.json")]
    public async Task Plan_EveryLine_FitsEightyColumns(string file)
    {
        var answer = await Shell.Run("plan", Path.Combine(Papers.Root, "demo-seed", file));

        Assert.All(answer.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task Plan_RunThatGoesOnAlone_ComesWithItsCaution()
    {
        var answer = await Shell.Run(Demo);

        Assert.Contains("with nobody there", answer.Output, StringComparison.Ordinal);
        Assert.Contains("Caution, running with nobody there:", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_Chain_IsToldBecauseByBecause()
    {
        var answer = await Shell.Run("plan", Papers.FirstLines, "--now", "2026-11-25T08:00:00Z");
        var because = answer.Lines.SkipWhile(l => l != "Next upload").TakeWhile(l => l.Length > 0).Where(l => l.Contains("because", StringComparison.Ordinal));

        Assert.Equal(7, because.Count());
    }

    [Fact]
    public async Task Plan_OneQuestion_IsAsked()
    {
        var answer = await Shell.Run("plan", Papers.FirstLines);

        Assert.Single(answer.Lines, line => line.Contains("The one question:", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true, true, true)]
    [InlineData(true, false, false)]
    [InlineData(false, true, false)]
    public async Task Plan_Headings_AreBoldOnAColourTerminalOnly(bool terminal, bool colour, bool bold)
    {
        var answer = await Shell.RunAt(new StillClock(Shell.Anchor), ["plan", Papers.FirstLines], terminal, colour);

        Assert.Equal(bold, answer.Output.Contains('\u001b', StringComparison.Ordinal));
    }

    [Fact]
    public async Task Plan_Twice_IsTheSame() => Assert.Equal(await Shell.Run(Demo), await Shell.Run(Demo));

    [Fact]
    public async Task Plan_NothingLeft_SaysWhatToType()
    {
        using var papers = new Papers();
        var file = papers.Write("""{ "format": 1, "name": "Shed", "zone": "Etc/UTC", "series": [{ "id": "s", "name": "Sand Yacht" }] }""");

        var answer = await Shell.Run("plan", file);

        Assert.Equal(0, answer.Code);
        Assert.Contains("Type a few lines of work", answer.Flat, StringComparison.Ordinal);
        Assert.Contains("Nothing is planned at all for: Sand Yacht", answer.Flat, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_UnknownFormat_IsRefused()
    {
        var answer = await Shell.Run("plan", Papers.FirstLines, "--format", "xml");

        Assert.Equal(2, answer.Code);
        Assert.StartsWith("--format: 'xml' is unknown; write text or json.", answer.Error, StringComparison.Ordinal);
    }
}
