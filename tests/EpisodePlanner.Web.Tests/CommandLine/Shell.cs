using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Web.CommandLine;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>What a command left behind.</summary>
internal sealed record Answer(int Code, string Output, string Error)
{
    public IReadOnlyList<string> Lines => Output.Split('\n');

    /// <summary>The output with its lines put together again.</summary>
    public string Flat => string.Join(' ', Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>Runs commands in this process, with writers and a clock of the test's own.</summary>
internal static class Shell
{
    public static readonly DateTimeOffset Anchor = new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero);

    public static Task<Answer> Run(params string[] arguments) => RunAt(new StillClock(Anchor), arguments);

    public static Task<Answer> RunAt(DateTimeOffset now, params string[] arguments) => RunAt(new StillClock(now), arguments);

    /// <summary>Runs a command with settings of the server.</summary>
    public static Task<Answer> RunWith(IReadOnlyDictionary<string, string> settings, params string[] arguments) =>
        RunAt(new StillClock(Anchor), arguments, settings: settings);

    public static async Task<Answer> RunAt(TimeProvider clock, string[] arguments, bool terminal = false, bool colour = true, IReadOnlyDictionary<string, string>? settings = null)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        var surroundings = new Surroundings
        {
            Output = output,
            Error = error,
            Prover = new PlanProver(),
            Clock = clock,
            OutputIsTerminal = terminal,
            ErrorIsTerminal = terminal,
            WithColour = colour,
            Environment = settings ?? new Dictionary<string, string>(),
        };
        var code = await PlannerCommand.Run(arguments, surroundings, TestContext.Current.CancellationToken);
        return new Answer(code, output.ToString(), error.ToString());
    }
}

/// <summary>A clock that always shows one moment.</summary>
internal sealed class StillClock(DateTimeOffset now) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => now;

    public override long GetTimestamp() => 0;
}

/// <summary>A clock whose every look takes 0.7 seconds, as if the work were slow.</summary>
internal sealed class SlowClock : TimeProvider
{
    private long looks;

    public override DateTimeOffset GetUtcNow() => Shell.Anchor;

    public override long TimestampFrequency => 10;

    public override long GetTimestamp() => 7 * looks++;
}
