using System.Diagnostics;
using EpisodePlanner.Checking;
using EpisodePlanner.Trials.Apps;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Killing;

/// <summary>
/// Kills the server at random moments while several programs write and import. After each start everything that it had
/// said yes to must be there, and nothing by half.
/// </summary>
/// <param name="Times">How often it is killed.</param>
/// <param name="Writers">How many programs write.</param>
/// <param name="Seed">Chooses the moments.</param>
public sealed record KillTrial(int Times, int Writers, ulong Seed)
{
    private const int LeastMilliseconds = 30;
    private const int MostMilliseconds = 700;

    /// <summary>Runs the trial.</summary>
    /// <param name="start">Starts the server on the same data.</param>
    /// <param name="stop">Ends the trial.</param>
    /// <exception cref="TrialException">The server lost something, or kept something by half.</exception>
    public async Task<KillFigures> Run(Func<Task<RunningApp>> start, CancellationToken stop)
    {
        var dice = new Dice(Seed);
        var slowest = TimeSpan.Zero;
        var app = await start();
        try
        {
            var api = new Api(app.Client, stop);
            var workshop = await api.Import(TrialWorkshop.File("Kill", Enumerable.Range(0, Writers).SelectMany(Writer.Places), []));
            var replay = await HistoryReplay.Begin(api, workshop);
            var writers = Enumerable.Range(0, Writers).Select(number => new Writer(workshop, number)).ToList();
            for (var kill = 0; kill < Times; kill++)
            {
                var writing = writers.Select(writer => writer.WriteUntilCutOff(api)).ToList();
                await Task.Delay(dice.Between(LeastMilliseconds, MostMilliseconds), stop);
                await app.Kill();
                await Task.WhenAll(writing);
                await app.DisposeAsync();

                var begun = Stopwatch.GetTimestamp();
                app = await start();
                slowest = Max(slowest, Stopwatch.GetElapsedTime(begun));
                api = new Api(app.Client, stop);
                await Check(api, writers, replay);
            }

            return Figures([.. writers.SelectMany(writer => writer.Promises)], replay.Version, slowest);
        }
        finally
        {
            await app.DisposeAsync();
        }
    }

    private static TimeSpan Max(TimeSpan one, TimeSpan other) => one > other ? one : other;

    private static async Task Check(Api api, List<Writer> writers, HistoryReplay replay)
    {
        var workshops = await WorkshopList.Read(api);
        foreach (var writer in writers)
        {
            await writer.Check(api, workshops);
        }

        await replay.Follow(api);
    }

    private KillFigures Figures(IReadOnlyList<Promise> promises, long version, TimeSpan slowest) => new(
        Times,
        promises.Sum(promise => promise.Acknowledged),
        promises.Sum(promise => promise.Kept),
        promises.Sum(promise => promise.Lost),
        version,
        slowest);
}
