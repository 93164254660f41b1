using System.Diagnostics;

namespace EpisodePlanner.Databases.Servers;

/// <summary>Runs programs as the user who may run a server: PostgreSQL refuses to be run by root.</summary>
internal static class ServerUser
{
    /// <summary>Its name on the machine and in the server.</summary>
    public const string Name = "postgres";

    /// <summary>Gives a folder to the user.</summary>
    public static Task Own(string folder) => Environment.IsPrivilegedProcess
        ? Must(new ProcessStartInfo("chown", [Name, folder]))
        : Task.CompletedTask;

    /// <summary>Runs a program and hears what it says; throws where it fails.</summary>
    public static Task Must(string program, IReadOnlyList<string> arguments) => Must(Start(program, arguments));

    /// <summary>The same for one that leaves a process behind, which would hold the other ends of the pipes.</summary>
    public static async Task MustUnheard(string program, IReadOnlyList<string> arguments)
    {
        if (await Try(program, arguments) is not 0 and var code)
        {
            throw new InvalidOperationException($"'{program}' ended with exit code {code}.");
        }
    }

    /// <summary>Runs a program that may fail.</summary>
    /// <returns>Its exit code.</returns>
    public static async Task<int> Try(string program, IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(Start(program, arguments))!;
        await process.WaitForExitAsync();
        return process.ExitCode;
    }

    private static async Task Must(ProcessStartInfo start)
    {
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        using var process = Process.Start(start)!;
        var said = await Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException(
                $"'{start.FileName}' ended with exit code {process.ExitCode}:\n{string.Concat(said)}");
        }
    }

    // The folder of the tests may be one that the user cannot enter.
    private static ProcessStartInfo Start(string program, IReadOnlyList<string> arguments) =>
        Environment.IsPrivilegedProcess
            ? new("runuser", ["--user", Name, "--", program, .. arguments]) { WorkingDirectory = "/" }
            : new(program, arguments) { WorkingDirectory = "/" };
}
