namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class HelpTests
{
    [Theory]
    [InlineData("plan")]
    [InlineData("check")]
    [InlineData("prove")]
    [InlineData("outline")]
    [InlineData("letter")]
    public async Task Help_OfACommand_ShowsAnExampleThatRuns(string command)
    {
        var answer = await Shell.Run(command, "--help");
        var example = answer.Lines.Single(l => l.Contains("Example: ", StringComparison.Ordinal)).Split("Example: ")[1].Trim();
        var typed = example.Replace("demo-seed/", $"{Path.Combine(Papers.Root, "demo-seed")}/", StringComparison.Ordinal).Split(' ');

        Assert.Equal(0, answer.Code);
        Assert.Equal(command, typed[0]);
        var run = await Shell.Run(typed);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.NotEmpty(run.Output);
    }

    [Fact]
    public async Task Help_OfAll_NamesEveryCommandAndFitsThePage()
    {
        var answer = await Shell.Run("--help");

        Assert.Equal(0, answer.Code);
        Assert.All(["serve", "import <FILE>", "export", "plan <FILE>", "check <FILE>", "prove <FILE>", "outline <FILE>", "letter <FILE>", "health"], c => Assert.Contains(c, answer.Output, StringComparison.Ordinal));
        Assert.All(answer.Lines, line => Assert.InRange(line.TrimEnd().Length, 0, 80));
    }

    [Theory]
    [InlineData("chek")]
    [InlineData("plan")]
    [InlineData("plan", "a.json", "b.json")]
    [InlineData("prove", "a.json")]
    [InlineData("outline", "a.json")]
    [InlineData("import")]
    [InlineData("export", "a.json")]
    [InlineData("--demo", "a.json")]
    [InlineData("plan", "a.json", "--soon")]
    public async Task WrongUse_IsBadInputAndPointsToHelp(params string[] arguments)
    {
        var answer = await Shell.Run(arguments);

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains("--help", answer.Error, StringComparison.Ordinal);
    }
}
