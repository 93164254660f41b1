using EpisodePlanner.Trials.Asking;
using EpisodePlanner.Trials.Fuzzing;

namespace EpisodePlanner.Benchmarks.Trials;

/// <summary>Whether every bad request is refused well.</summary>
internal sealed class FuzzBenchmark : IBenchmark
{
    private static readonly TimeSpan Most = TimeSpan.FromMinutes(15);

    public string Name => "fuzz";

    public string Usage => "fuzz [--requests 5000] [--seed 1]   bad requests to every operation, on each database";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--requests", "--seed");
        var trial = new FuzzTrial(options.Number("--requests", 5_000), (ulong)options.Number("--seed", 1));
        var isWell = TrialServer.OnEach(Most, async (kind, app, stop) =>
        {
            var figures = await trial.Run(new Api(app.Client, stop));
            await page.WriteLineAsync($"{kind}: {figures.Requests} requests to {figures.Operations} operations");
            await Tell(figures, page);
            if (figures.Findings.Count > 0)
            {
                await page.WriteLineAsync($"The server's last words:\n{app}");
            }

            return figures.Findings.Count == 0;
        });
        return isWell.GetAwaiter().GetResult() ? 0 : 1;
    }

    private static async Task Tell(FuzzFigures figures, TextWriter page)
    {
        foreach (var (status, count) in figures.Statuses)
        {
            await page.WriteLineAsync($"  {status}  {count,6}");
        }

        if (figures.NeverDone.Count > 0)
        {
            await page.WriteLineAsync($"  never done: {string.Join(", ", figures.NeverDone)}");
        }

        foreach (var finding in figures.Findings)
        {
            await page.WriteLineAsync($"  {finding}");
        }
    }
}
