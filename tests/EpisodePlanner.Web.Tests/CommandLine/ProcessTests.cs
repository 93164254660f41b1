using System.Diagnostics;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>The real process, as a shell starts it.</summary>
public sealed class ProcessTests
{
    private static async Task<Answer> Start(params string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "EpisodePlanner.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new Answer(process.ExitCode, await output, await error);
    }

    [Fact]
    public async Task Plan_ByTheClockOfTheMachine_IsDoneAndPlainWhereRedirected()
    {
        var answer = await Start("plan", Papers.FirstLines);

        Assert.Equal(0, answer.Code);
        Assert.StartsWith("First lines, planned ", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', answer.Output);
        Assert.DoesNotContain('\ufeff', answer.Output);
        Assert.Contains("“first pull”", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_BadFile_IsTwo()
    {
        using var papers = new Papers();

        var answer = await Start("check", papers.Write("{"));

        Assert.Equal((2, ""), (answer.Code, answer.Output));
        Assert.Contains(": $", answer.Error, StringComparison.Ordinal);
    }
}
