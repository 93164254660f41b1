using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Asking;
using EpisodePlanner.Trials.Killing;

namespace EpisodePlanner.Benchmarks.Trials;

/// <summary>Whether everything that was acknowledged outlives the server's sudden end.</summary>
internal sealed class KillBenchmark : IBenchmark
{
    private static readonly TimeSpan MostEach = TimeSpan.FromSeconds(30);

    public string Name => "kill";

    public string Usage => "kill [--times 50] [--writers 4] [--seed 1]   kills the server while it writes, on SQLite";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--times", "--writers", "--seed");
        var trial = new KillTrial(
            options.Number("--times", 50), options.Number("--writers", 4), (ulong)options.Number("--seed", 1));
        return Run(trial, page).GetAwaiter().GetResult();
    }

    private static async Task<int> Run(KillTrial trial, TextWriter page)
    {
        await using var database = await new SqliteDatabases().New();
        using var stop = new CancellationTokenSource(MostEach * trial.Times);
        try
        {
            var figures = await trial.Run(() => TrialServer.Start(database, stop.Token), stop.Token);
            await page.WriteLineAsync(
                $"""
                killed                     {figures.Kills} times
                acknowledged, all there    {figures.Acknowledged}
                in flight, there, whole    {figures.Kept}
                in flight, not there       {figures.Lost}
                version, all replayed      {figures.Version}
                slowest start until ready  {figures.SlowestStart.TotalSeconds:F1} s
                """);
            return 0;
        }
        catch (TrialException broken)
        {
            await page.WriteLineAsync(broken.Message);
            return 1;
        }
    }
}
