namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class ProgressTests
{
    private static readonly string[] Plan = ["plan", Papers.Demo, "--now", "2026-11-25T18:00:00Z"];

    [Fact]
    public async Task Quick_SaysNothing() => Assert.Empty((await Shell.Run(Plan)).Error);

    [Fact]
    public async Task Slow_SaysPlainLinesElsewhere()
    {
        var answer = await Shell.RunAt(new SlowClock(), Plan);

        Assert.Equal((await Shell.Run(Plan)).Output, answer.Output);
        Assert.DoesNotContain('\r', answer.Error);
        Assert.All(answer.Error.TrimEnd('\n').Split('\n'), line => Assert.Matches("^[a-z ]+, [0-9]+ % done$", line));
    }

    [Fact]
    public async Task Slow_RewritesOneLineOnATerminalAndLeavesItClean()
    {
        var answer = await Shell.RunAt(new SlowClock(), Plan, terminal: true, colour: false);

        Assert.Contains("% done", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', answer.Error);
        Assert.Matches("\r +\r$", answer.Error);
    }
}
