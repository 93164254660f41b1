using EpisodePlanner.Planning;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>Two hundred editors of one workshop at once, over two stores that know nothing of each other.</summary>
public abstract class ParallelSuite(StoreDatabases databases)
{
    private const int Editors = 200;
    private const int Counters = 20;

    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Fact]
    public async Task Make_ByReadingAndWriting_LosesNoUpdate()
    {
        await using var bench = await databases.New();
        var (made, stores) = await Begin(bench, Counters);

        await Task.WhenAll(Enumerable.Range(0, Editors).Select(i => CountUp(stores[i % 2], made.Id, Nth(i % Counters))));

        var end = await bench.Cold(made.Id);
        Assert.Equal(1 + Editors, end.Version);
        Assert.All(Enumerable.Range(0, Counters), i =>
            Assert.Equal(Editors / Counters, end.Workshop.Tasks.Find(Nth(i))!.FilmingMinutes));
        Same.Snapshots(end, await stores[0].Now(made.Id));
        Same.Snapshots(end, await stores[1].Now(made.Id));
    }

    [Fact]
    public async Task Make_LinksPutTogetherByAll_AreNeverACircle()
    {
        await using var bench = await databases.New();
        var (made, stores) = await Begin(bench, Editors);

        // Each links its task behind the next one; all links together would be a ring.
        var outcomes = await Task.WhenAll(Enumerable.Range(0, Editors).Select(i => stores[i % 2].Try(
            made.Id,
            Put(Nth(i), task => task with { Links = [new TaskLink { Task = Nth((i + 1) % Editors) }] }),
            new Expectation.UntouchedSince(1))));

        Assert.Equal(Editors - 1, outcomes.OfType<Made>().Count());
        var broken = Assert.Single(outcomes.OfType<Broken>());
        Assert.Contains(broken.Reasons, reason => reason.Says.Contains("circle", StringComparison.OrdinalIgnoreCase));
        Assert.Empty(WorkshopRules.Check((await bench.Cold(made.Id)).Workshop));
    }

    [Fact]
    public async Task Make_UndoAndSuppose_AllAtOnce_EndWell()
    {
        await using var bench = await databases.New();
        var (made, stores) = await Begin(bench, Counters);

        var outcomes = await Task.WhenAll(Enumerable.Range(0, Editors).Select(i => Act(stores[i % 2], made.Id, i)));

        var end = await bench.Cold(made.Id);
        Assert.Empty(WorkshopRules.Check(end.Workshop));
        var versions = outcomes.OfType<Made>().Select(one => one.Change.Line.Version).Order().ToList();
        Assert.Equal(Enumerable.Range(2, versions.Count).Select(version => (long)version), versions);
        Assert.Equal(1 + versions.Count, end.Version);
        Same.Snapshots(end, await stores[0].Now(made.Id));
        Same.Snapshots(end, await stores[1].Now(made.Id));
    }

    private static async Task<(Snapshot Made, StoreBench[] Stores)> Begin(StoreBench bench, int tasks)
    {
        var more = Enumerable.Range(0, tasks).Select(i => Sweep with { Id = Nth(i), Milestone = null });
        var made = await bench.Create(Sound with { Tasks = Sound.Tasks.Concat(more).ToKeyed() });
        return (made, [bench, await bench.Again()]);
    }

    private static async Task CountUp(StoreBench bench, Id workshop, Id task)
    {
        EditOutcome outcome;
        do
        {
            var now = await bench.Now(workshop);
            var seen = now.VersionOf(ThingKinds.Tasks.Of(task))!.Value;
            var change = new TaskChange(task, Counted(now.Workshop.Tasks.Find(task)!));
            outcome = await bench.Try(workshop, change, new Expectation.Present(ThingKinds.Tasks.Of(task), [seen]));
        }
        while (outcome is Stale);

        Assert.IsType<Made>(outcome);
    }

    private static Task<EditOutcome> Act(StoreBench bench, Id workshop, int i) => (i % 4) switch
    {
        0 => bench.Store.Undo(workshop, null, Maker, Expectation.None, Stop),
        1 => bench.Store.Redo(workshop, Maker, Expectation.None, Stop),
        2 => Suppose(bench, workshop, i),
        _ => bench.Try(workshop, Put(Nth(i % Counters), task => task with { Note = $"by {i}" })),
    };

    private static async Task<EditOutcome> Suppose(StoreBench bench, Id workshop, int i)
    {
        var draft = new SupposeDraft(null, [], "Draft", null, new Batch([new NameChange($"Shed {i}")]), Maker, null);
        var kept = (await bench.Supposes.Put(workshop, draft, Stop)).Kept!;
        return await bench.Supposes.Keep(workshop, kept.Id, Maker, Stop);
    }

    private static TaskChange Put(Id task, Func<WorkTask, WorkTask> edit) =>
        new(task, edit(Sweep with { Id = task, Milestone = null }));

    private static WorkTask Counted(WorkTask task) => task with { FilmingMinutes = task.FilmingMinutes + 1 };

    private static Id Nth(int i) => Id($"t{i:000}");
}
