using System.Security.Cryptography;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Benchmarks.Storing;

/// <summary>The times of what a store does with one workshop.</summary>
internal sealed class StoreRun
{
    private const string Maker = "Anna";
    private const int HistoryLines = 50;

    private readonly Func<Storage> open;
    private readonly Workshop workshop;
    private int turn;

    private StoreRun(Func<Storage> open, Workshop workshop) => (this.open, this.workshop) = (open, workshop);

    /// <summary>The median of each step.</summary>
    public Dictionary<string, TimeSpan> Times { get; } = [];

    /// <summary>Measures every step over an empty database.</summary>
    /// <param name="open">The database; each call stands for another process.</param>
    /// <param name="workshop">The workshop.</param>
    public static async Task<StoreRun> Measure(Func<Storage> open, Workshop workshop)
    {
        var run = new StoreRun(open, workshop);
        await run.Measure();
        return run;
    }

    private async Task Measure()
    {
        var store = await Store();
        var made = await Time("making it", () => store.Create(workshop, Maker, null, default));
        var id = ((Made)made).Now.Id;
        var storage = open();
        await storage.Prepare(default);
        await Time("loading it cold", () => Over(storage).Find(id, default));
        await Time("finding it unchanged", () => store.Find(id, default));
        await Time("one change", () => store.Make(id, Edit(Turned(1)), default));
        var other = await Store();
        await Time("one change, and finding it in another process", async () =>
        {
            await store.Make(id, Edit(Turned(1)), default);
            return await other.Find(id, default);
        });
        var count = workshop.Tasks.Count;
        await Time("a batch that changes every task", () => store.Make(id, Edit(Turned(count)), default));
        await Time("its undo and redo", async () =>
        {
            await store.Undo(id, null, Maker, Expectation.None, default);
            return await store.Redo(id, Maker, Expectation.None, default);
        });
        await Time("a page of the history", () => store.History(id, null, HistoryLines, default));
    }

    private async Task<T> Time<T>(string step, Func<Task<T>> work)
    {
        var (median, result) = Stopwatching.Of(() => work().GetAwaiter().GetResult());
        Times[step] = median;
        await Task.Yield();
        return result;
    }

    private async Task<WorkshopStore> Store()
    {
        var storage = open();
        await storage.Prepare(default);
        return Over(storage);
    }

    private static WorkshopStore Over(Storage storage)
    {
        var clock = new StandingClock();
        return new WorkshopStore(storage, new IdSource(clock, RandomNumberGenerator.Create()), clock);
    }

    private static Edit Edit(Change change) => new(change, Maker);

    /// <summary>A change of so many tasks that is another one each time.</summary>
    private Batch Turned(int tasks)
    {
        turn++;
        return new Batch(workshop.Tasks.Take(tasks)
            .Select(task => (Change)new TaskChange(task.Id, task with { Note = $"Turn {turn}" })).ToValueList());
    }
}
