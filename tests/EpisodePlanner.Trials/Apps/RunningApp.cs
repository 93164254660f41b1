using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace EpisodePlanner.Trials.Apps;

/// <summary>The server as a process of its own on a loopback port; killed when disposed of.</summary>
public sealed class RunningApp : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Process process;
    private readonly LastWords words;
    private bool isGone;

    private RunningApp(Process process, LastWords words, Uri address)
    {
        (this.process, this.words) = (process, words);
        var handler = new SocketsHttpHandler { UseProxy = false, AllowAutoRedirect = false };
        Client = new HttpClient(handler) { BaseAddress = address };
    }

    /// <summary>Asks it.</summary>
    public HttpClient Client { get; }

    /// <summary>Starts it and waits until it is ready.</summary>
    /// <param name="program">The app's assembly.</param>
    /// <param name="settings">Its environment.</param>
    /// <param name="workingFolder">Where it is started.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="InvalidOperationException">It ended, or did not become ready; with what it said.</exception>
    public static async Task<RunningApp> Start(
        string program, IReadOnlyDictionary<string, string> settings, string workingFolder, CancellationToken stop)
    {
        var app = Launch(program, settings, workingFolder);
        try
        {
            await app.Becomes("/health/ready", isThere: true, stop);
            return app;
        }
        catch
        {
            await app.DisposeAsync();
            throw;
        }
    }

    /// <summary>Starts it and waits for nothing.</summary>
    /// <param name="program">The app's assembly.</param>
    /// <param name="settings">Its environment.</param>
    /// <param name="workingFolder">Where it is started.</param>
    public static RunningApp Launch(string program, IReadOnlyDictionary<string, string> settings, string workingFolder)
    {
        var address = new Uri($"http://127.0.0.1:{FreePort()}");
        var start = new ProcessStartInfo("dotnet", [program])
        {
            WorkingDirectory = workingFolder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        AppSettings.Take(start.Environment, settings, address);
        var process = Process.Start(start)!;
        return new RunningApp(process, LastWords.Of(process), address);
    }

    /// <summary>Waits until an address answers well, or until it does not.</summary>
    /// <exception cref="InvalidOperationException">It ended, or that did not happen; with what it said.</exception>
    public async Task Becomes(string path, bool isThere, CancellationToken stop)
    {
        var since = Stopwatch.GetTimestamp();
        while (await IsThere(path, stop) != isThere)
        {
            if (process.HasExited || Stopwatch.GetElapsedTime(since) > Patience)
            {
                var state = process.HasExited ? $"ended with exit code {process.ExitCode}" : $"still answers otherwise at {path}";
                throw new InvalidOperationException($"The server {state}. It says:\n{words}");
            }

            await Task.Delay(20, stop);
        }
    }

    /// <summary>Asks it to stop, as a service manager does.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> Stop(CancellationToken stop)
    {
        using (var kill = Process.Start("/bin/sh", ["-c", $"kill -TERM {process.Id}"]))
        {
            await kill.WaitForExitAsync(stop);
        }

        await process.WaitForExitAsync(stop).WaitAsync(Patience, stop);
        return process.ExitCode;
    }

    /// <summary>Ends it in the middle of whatever it does, as a power cut would.</summary>
    public async Task Kill()
    {
        process.Kill();
        await process.WaitForExitAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (!isGone)
        {
            isGone = true;
            Client.Dispose();
            await Kill();
            process.Dispose();
        }
    }

    /// <inheritdoc/>
    public override string ToString() => words.ToString();

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private async Task<bool> IsThere(string path, CancellationToken stop)
    {
        try
        {
            using var answer = await Client.GetAsync(new Uri(path, UriKind.Relative), stop);
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
