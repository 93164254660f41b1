using System.Diagnostics;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>Programs that look at the files for the server; tests/run installs them where it may.</summary>
internal static class Tool
{
    /// <summary>Whether a program is on the path.</summary>
    public static bool Exists(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .Any(folder => File.Exists(Path.Combine(folder, program)));

    /// <summary>Skips the test where a program is missing; on CI it fails.</summary>
    public static void Need(bool there, string program)
    {
        var missing = $"'{program}' is not installed.";
        Assert.False(!there && Environment.GetEnvironmentVariable("CI") == "true", missing);
        Assert.SkipUnless(there, missing);
    }

    /// <summary>Runs a program in the root of the source tree.</summary>
    /// <param name="program">Its name.</param>
    /// <param name="arguments">What follows the name.</param>
    /// <param name="settings">Changes to the environment; null takes a variable away.</param>
    public static async Task<Answer> Run(
        string program, IReadOnlyList<string> arguments, params IReadOnlyList<(string Name, string? Value)> settings)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = Papers.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in settings)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var stop = TestContext.Current.CancellationToken;
        var said = await Task.WhenAll(
            process.StandardOutput.ReadToEndAsync(stop), process.StandardError.ReadToEndAsync(stop));
        await process.WaitForExitAsync(stop);
        return new Answer(process.ExitCode, said[0], said[1]);
    }
}
