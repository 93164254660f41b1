using System.Text.RegularExpressions;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Web.CommandLine;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>The serving command, run in this process until it is stopped.</summary>
internal sealed partial class RunningCommand : IAsyncDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly Lines output = new();
    private readonly Task<int> run;

    private RunningCommand(IReadOnlyDictionary<string, string> settings, string[] arguments)
    {
        var surroundings = new Surroundings
        {
            Output = output,
            Error = TextWriter.Null,
            Prover = new PlanProver(),
            Clock = new StillClock(Shell.Anchor),
            Environment = settings,
        };
        run = PlannerCommand.Run(arguments, surroundings, stop.Token);
    }

    public HttpClient Client { get; private set; } = new();

    /// <summary>What it said when it was ready.</summary>
    public string Said => output.ToString();

    /// <summary>Starts it on a port that is free, and waits until it says where it listens.</summary>
    public static async Task<RunningCommand> Start(string folder, params string[] arguments)
    {
        var settings = new Dictionary<string, string>
        {
            ["EPISODE_PLANNER_DATA"] = folder,
            ["EPISODE_PLANNER_URLS"] = "http://127.0.0.1:0",
        };
        var command = new RunningCommand(settings, arguments);
        await Task.WhenAny(command.output.Flushed, command.run).WaitAsync(TestContext.Current.CancellationToken);
        command.Client = new HttpClient { BaseAddress = new Uri(Address().Match(command.Said).Value) };
        return command;
    }

    /// <summary>Stops it.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> Stop()
    {
        await stop.CancelAsync();
        return await run;
    }

    public async ValueTask DisposeAsync()
    {
        await Stop();
        Client.Dispose();
        stop.Dispose();
    }

    [GeneratedRegex("http://127.0.0.1:[0-9]+")]
    private static partial Regex Address();

    /// <summary>A writer that tells when what it got is to be read.</summary>
    private sealed class Lines : StringWriter
    {
        private readonly TaskCompletionSource flushed = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task Flushed => flushed.Task;

        public override Task FlushAsync(CancellationToken cancellationToken)
        {
            flushed.TrySetResult();
            return Task.CompletedTask;
        }
    }
}
