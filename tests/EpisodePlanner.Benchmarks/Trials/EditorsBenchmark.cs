using EpisodePlanner.Trials.Asking;
using EpisodePlanner.Trials.Editing;

namespace EpisodePlanner.Benchmarks.Trials;

/// <summary>Whether many editors of one workshop lose nothing.</summary>
internal sealed class EditorsBenchmark : IBenchmark
{
    private static readonly TimeSpan Most = TimeSpan.FromMinutes(10);

    public string Name => "editors";

    public string Usage => "editors [--editors 200] [--rounds 3]   parallel editors of one workshop, on each database";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--editors", "--rounds");
        var trial = new EditorsTrial(options.Number("--editors", 200), options.Number("--rounds", 3));
        var isWell = TrialServer.OnEach(Most, async (kind, app, stop) =>
        {
            try
            {
                await page.WriteLineAsync($"{kind}: {await Tell(trial, new Api(app.Client, stop))}");
                return true;
            }
            catch (Exception broken) when (broken is TrialException or HttpRequestException)
            {
                await page.WriteLineAsync($"{kind}: {broken.Message} The server's last words:\n{app}");
                return false;
            }
        });
        return isWell.GetAwaiter().GetResult() ? 0 : 1;
    }

    private static async Task<string> Tell(EditorsTrial trial, Api api)
    {
        var figures = await trial.Run(api);
        return $"{figures.Editors} editors made {figures.Changes} changes in {figures.Took.TotalSeconds:F1} s "
            + $"({figures.Changes / figures.Took.TotalSeconds:F0} a second), looked again {figures.Retries} times, "
            + $"had {figures.CirclesRefused} circles refused; slowest request {figures.Slowest.TotalMilliseconds:F0} ms";
    }
}
