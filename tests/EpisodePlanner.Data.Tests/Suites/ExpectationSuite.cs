using EpisodePlanner.Planning;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>What is expected is looked at in the transaction that makes the change.</summary>
public abstract class ExpectationSuite(StoreDatabases databases)
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;
    private static readonly Aggregate SweepThing = ThingKinds.Tasks.Of(Sweep.Id);
    private static readonly Aggregate Dust = ThingKinds.Tasks.Of(Id("dust"));

    [Fact]
    public async Task Present_AtOneOfTheVersions()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        Assert.IsType<Made>(await bench.Try(made.Id, Note("one"), new Expectation.Present(SweepThing, [7, 1])));
        Assert.IsType<Made>(await bench.Try(made.Id, Note("two"), new Expectation.Present(SweepThing, [])));
        var stale = Assert.IsType<Stale>(
            await bench.Try(made.Id, Note("three"), new Expectation.Present(SweepThing, [1, 2])));

        Assert.Equal([new StaleThing(SweepThing, 3, null)], stale.Things);
        Assert.Equal("two", stale.Now.Workshop.Tasks.Find(Sweep.Id)!.Note);
    }

    [Fact]
    public async Task Present_OfWhatWasDeleted_SaysWhen()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, new TaskChange(Sweep.Id, null));

        var stale = Assert.IsType<Stale>(await bench.Try(made.Id, Note("one"), new Expectation.Present(SweepThing, [1])));

        Assert.Equal([new StaleThing(SweepThing, null, bench.Clock.Now)], stale.Things);
    }

    [Fact]
    public async Task Absent_OnlyWhereNothingIs()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var dust = Sweep with { Id = Dust.Id };

        Assert.IsType<Made>(await bench.Try(made.Id, new TaskChange(dust.Id, dust), new Expectation.Absent(Dust)));
        var stale = Assert.IsType<Stale>(
            await bench.Try(made.Id, new TaskChange(dust.Id, dust), new Expectation.Absent(Dust)));

        Assert.Equal([new StaleThing(Dust, 2, null)], stale.Things);
    }

    [Fact]
    public async Task WorkshopAt_OneOfTheVersions()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        Assert.IsType<Made>(await bench.Try(made.Id, Note("one"), new Expectation.WorkshopAt([1])));
        Assert.Empty(Assert.IsType<Stale>(await bench.Try(made.Id, Note("two"), new Expectation.WorkshopAt([1]))).Things);
        Assert.IsType<Made>(await bench.Try(made.Id, Note("two"), new Expectation.WorkshopAt([])));
    }

    [Fact]
    public async Task UntouchedSince_LooksAtAllThatTheChangeTouches()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var dust = Sweep with { Id = Dust.Id };
        await bench.Make(made.Id, new NameChange("Shed"));
        await bench.Make(made.Id, new TaskChange(dust.Id, dust));
        await bench.Make(made.Id, new TaskChange(dust.Id, null));
        var batch = new Batch([Note("one"), new TaskChange(dust.Id, dust), new ZoneChange("Europe/Lisbon")]);

        var stale = Assert.IsType<Stale>(await bench.Try(made.Id, batch, new Expectation.UntouchedSince(1)));
        Assert.Equal(
            [new StaleThing(Dust, null, bench.Clock.Now), new StaleThing(Aggregate.About, 2, null)], stale.Things);
        Assert.IsType<Stale>(await bench.Try(made.Id, batch, new Expectation.UntouchedSince(3)));
        Assert.IsType<Made>(await bench.Try(made.Id, batch, new Expectation.UntouchedSince(4)));
    }

    [Fact]
    public async Task Undo_UnderAnExpectation()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, Note("one"));

        Assert.IsType<Stale>(await bench.Store.Undo(made.Id, 2, Maker, new Expectation.WorkshopAt([1]), Stop));
        Assert.IsType<Made>(await bench.Store.Undo(made.Id, 2, Maker, new Expectation.WorkshopAt([2]), Stop));
        Assert.IsType<Stale>(await bench.Store.Redo(made.Id, Maker, new Expectation.WorkshopAt([2]), Stop));
    }

    private static TaskChange Note(string note) => new(Sweep.Id, Sweep with { Note = note });
}
