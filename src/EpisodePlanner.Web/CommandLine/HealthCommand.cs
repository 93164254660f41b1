using System.CommandLine;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"health": whether a running planner answers; for a container, which has no other program to ask with.</summary>
internal static class HealthCommand
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);
    private static readonly Uri Usual = new("http://127.0.0.1:5080");

    public static Command Create(Surroundings surroundings)
    {
        var url = new Option<Uri>("--url")
        {
            Description = "Where it listens",
            DefaultValueFactory = _ => Usual,
            CustomParser = result => Uri.TryCreate(result.Tokens[0].Value, UriKind.Absolute, out var given) && IsWeb(given)
                ? given
                : Refuse(result.AddError),
        };
        var command = new Command(
            "health",
            "Asks a running planner whether it is ready for requests. The exit code is 0 if so and 1 if not.\n\n"
            + $"Example: health --url {Usual.GetLeftPart(UriPartial.Authority)}")
        {
            url,
        };
        command.SetAction((result, stop) => Run(result.GetValue(url)!, surroundings, stop));
        return command;
    }

    private static bool IsWeb(Uri url) => url.Scheme == Uri.UriSchemeHttp || url.Scheme == Uri.UriSchemeHttps;

    private static Uri Refuse(Action<string> addError)
    {
        addError($"'--url' takes an address such as {Usual.GetLeftPart(UriPartial.Authority)}.");
        return Usual;
    }

    private static async Task<int> Run(Uri url, Surroundings surroundings, CancellationToken stop)
    {
        var (ready, says) = await Ask(new Uri(url, "/health/ready"), stop).ConfigureAwait(false);
        await (ready ? surroundings.Output : surroundings.Error).WriteLineAsync(says).ConfigureAwait(false);
        return ready ? ExitCode.Done : ExitCode.Failed;
    }

    private static async Task<(bool Ready, string Says)> Ask(Uri url, CancellationToken stop)
    {
        // A proxy could answer for it.
        using var handler = new SocketsHttpHandler { UseProxy = false };
        using var client = new HttpClient(handler) { Timeout = Patience };
        try
        {
            using var answer = await client.GetAsync(url, stop).ConfigureAwait(false);
            return answer.IsSuccessStatusCode
                ? (true, $"Ready at {url.Authority}.")
                : (false, $"Not ready: {url} answers {(int)answer.StatusCode}.");
        }
        catch (HttpRequestException)
        {
            return (false, $"Nothing answers at {url.Authority}.");
        }
        catch (TaskCanceledException) when (!stop.IsCancellationRequested)
        {
            return (false, $"{url} does not answer within {Patience.TotalSeconds} seconds.");
        }
    }
}
