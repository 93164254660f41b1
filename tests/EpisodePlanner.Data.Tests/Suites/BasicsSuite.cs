using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>Making, changing and reading workshops.</summary>
public abstract class BasicsSuite(StoreDatabases databases)
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Fact]
    public async Task Create_ComesBackToTheByte()
    {
        await using var bench = await databases.New();

        var made = await bench.Create(Sound);
        var cold = await bench.Cold(made.Id);

        Assert.Equal(1, made.Version);
        Assert.Equal(WorkshopFile.Order(Sound), cold.Workshop);
        Assert.Equal(WorkshopFile.Write(Sound), WorkshopFile.Write(cold.Workshop));
        AssertSame(made, cold);
    }

    [Fact]
    public async Task Make_ChangesTheThingAndItsVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        bench.Clock.Move(NodaTime.Duration.FromMinutes(5));

        var changed = await bench.Make(made.Id, new TaskChange(Sweep.Id, Sweep with { Note = "twice" }));

        Assert.Equal(2, changed.Now.Version);
        Assert.Equal(2, changed.Now.VersionOf(ThingKinds.Tasks.Of(Sweep.Id)));
        Assert.Equal(1, changed.Now.VersionOf(Aggregate.About));
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 3, 1, 8, 5), changed.Now.PlannedAt);
        AssertSame(changed.Now, await bench.Now(made.Id));
        AssertSame(changed.Now, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Undo_ThenRedo()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var changed = await bench.Make(made.Id, new TaskChange(Sweep.Id, null));

        var undone = Assert.IsType<Made>(
            await bench.Store.Undo(made.Id, null, StoreBench.Maker, Expectation.None, StoreBench.Stop));
        var redone = Assert.IsType<Made>(
            await bench.Store.Redo(made.Id, StoreBench.Maker, Expectation.None, StoreBench.Stop));

        Assert.Equal(made.Workshop, undone.Now.Workshop);
        Assert.Equal(changed.Now.Workshop, redone.Now.Workshop);
        AssertSame(redone.Now, await bench.Cold(made.Id));
        var history = await bench.Store.History(made.Id, null, 10, StoreBench.Stop);
        Assert.Equal([Act.Redo, Act.Undo, Act.Change, Act.Begin], history!.Select(line => line.Act));
        Assert.Equal([2L, 2L, null, null], history!.Select(line => line.Of));
    }

    private static void AssertSame(Snapshot expected, Snapshot actual)
    {
        Assert.Equal(expected.Workshop, actual.Workshop);
        Assert.Equal((expected.Version, expected.PlannedAt), (actual.Version, actual.PlannedAt));
        Assert.Equal(
            expected.Versions.OrderBy(pair => pair.Key.ToString(), StringComparer.Ordinal),
            actual.Versions.OrderBy(pair => pair.Key.ToString(), StringComparer.Ordinal));
    }
}
