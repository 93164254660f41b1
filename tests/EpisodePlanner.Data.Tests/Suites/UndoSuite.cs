using EpisodePlanner.Planning;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>The history, undo and redo.</summary>
public abstract class UndoSuite(StoreDatabases databases)
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Fact]
    public async Task Undo_ThenRedo_LeadsBackAndForth()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var changed = await bench.Make(made.Id, new TaskChange(Sweep.Id, null));

        var undone = Assert.IsType<Made>(await Undo(bench, made.Id));
        var redone = Assert.IsType<Made>(await Redo(bench, made.Id));

        Assert.Equal(made.Workshop, undone.Now.Workshop);
        Assert.Equal(changed.Now.Workshop, redone.Now.Workshop);
        Same.Snapshots(redone.Now, await bench.Cold(made.Id));
        var history = (await bench.Store.History(made.Id, null, 10, Stop))!;
        Assert.Equal([Act.Redo, Act.Undo, Act.Change, Act.Begin], history.Select(line => line.Act));
        Assert.Equal([2L, 2L, null, null], history.Select(line => line.Of));
    }

    [Fact]
    public async Task Undo_GoesBackChangeByChange_AndRedoForthAgain()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        foreach (var note in new[] { "one", "two", "three" })
        {
            await bench.Make(made.Id, Note(note));
        }

        Assert.Equal(["two", "one", Sweep.Note], await Notes(bench, made.Id, 3, Undo));
        Assert.IsType<NothingThere>(await Undo(bench, made.Id));
        Assert.Equal(["one", "two", "three"], await Notes(bench, made.Id, 3, Redo));
        Assert.IsType<NothingThere>(await Redo(bench, made.Id));
        Assert.Equal(["two"], await Notes(bench, made.Id, 1, Undo));
    }

    [Fact]
    public async Task Redo_AfterAnotherChange_IsNotPossible()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, Note("one"));
        await Undo(bench, made.Id);
        await bench.Make(made.Id, new NameChange("Shed"));

        Assert.IsType<NothingThere>(await Redo(bench, made.Id));
    }

    [Fact]
    public async Task Undo_OfAnOlderVersion_LeavesTheYoungerOnes()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, Note("one"));
        await bench.Make(made.Id, new NameChange("Shed"));
        await bench.Make(made.Id, new ZoneChange("Europe/Lisbon"));

        await Undo(bench, made.Id, 2);
        var undone = Assert.IsType<Made>(await Undo(bench, made.Id, 3));

        // Name and zone are one aggregate, and yet two things to change.
        Assert.Equal(WorkshopAt(Sound with { Zone = "Europe/Lisbon" }), WorkshopAt(undone.Now.Workshop));
        Assert.Equal([false, false, false, true, true, false], (await bench.Store.History(made.Id, null, 9, Stop))!.Select(l => l.IsUndone));
    }

    [Fact]
    public async Task Undo_OfWhatWasChangedSince_NamesIt()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var dust = Sweep with { Id = Id("dust") };
        await bench.Make(made.Id, new Batch([new TaskChange(dust.Id, dust), Note("one")]));
        await bench.Make(made.Id, new TaskChange(dust.Id, null));

        var stale = Assert.IsType<Stale>(await Undo(bench, made.Id, 2));

        Assert.Equal([new StaleThing(ThingKinds.Tasks.Of(dust.Id), null, At(bench))], stale.Things);
        Assert.Equal("one", (await bench.Now(made.Id)).Workshop.Tasks.Find(Sweep.Id)!.Note);
    }

    [Fact]
    public async Task Undo_OfAnUndo_MakesTheChangeAgain_AndOfARedo_TakesItBack()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, Note("one"));
        await Undo(bench, made.Id);

        var again = Assert.IsType<Made>(await Undo(bench, made.Id, 3));
        Assert.Equal((Act.Redo, 2L), (again.Change.Line.Act, again.Change.Line.Of));
        Assert.IsType<NothingThere>(await Undo(bench, made.Id, 3));
        var back = Assert.IsType<Made>(await Undo(bench, made.Id, 4));

        Assert.Equal((Act.Undo, 2L), (back.Change.Line.Act, back.Change.Line.Of));
        Assert.Equal(made.Workshop, back.Now.Workshop);
    }

    [Fact]
    public async Task Undo_OfWhatCantBeUndone()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, Note("one"));
        await Undo(bench, made.Id, 2);

        Assert.All(new long[] { 1, 2, 9 }, version => Assert.IsType<NothingThere>(Undo(bench, made.Id, version).Result));
    }

    [Fact]
    public async Task Undo_OfAToldDate_TakesItBack()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var told = Sound.ToldDates.Single() with { Id = Id("told-2") };
        await bench.Make(made.Id, new ToldDateChange(told.Id, told));

        var undone = Assert.IsType<Made>(await Undo(bench, made.Id));
        var redone = Assert.IsType<Made>(await Redo(bench, made.Id));

        Assert.Equal(made.Workshop, undone.Now.Workshop);
        Assert.IsType<ToldDateTakenBack>(redone.Change.Before);
        Assert.IsType<Broken>(await bench.Try(made.Id, new ToldDateChange(told.Id, null)));
        Same.Snapshots(redone.Now, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task History_IsPagedAndTold()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, new TaskChange(Sweep.Id, Sweep with { Name = "Broom" }));
        await Undo(bench, made.Id);

        var newest = (await bench.Store.History(made.Id, null, 2, Stop))!;
        var rest = (await bench.Store.History(made.Id, newest[^1].Version, 2, Stop))!;

        Assert.Equal([3L, 2L, 1L], newest.Concat(rest).Select(line => line.Version));
        Assert.Equal(
            [
                $"Took back version 2: renamed task \u201c{Sweep.Name}\u201d to \u201cBroom\u201d",
                $"Renamed task \u201c{Sweep.Name}\u201d to \u201cBroom\u201d",
                "Made the workshop",
            ],
            newest.Concat(rest).Select(line => line.Says));
        Assert.All(newest, line => Assert.Equal((Maker, At(bench)), (line.Who, line.At)));
    }

    [Fact]
    public async Task FindChange_HoldsBothWays()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var change = Note("one");
        await bench.Make(made.Id, change);

        var stored = (await (await bench.Again()).Store.FindChange(made.Id, 2, Stop))!;

        Assert.Equal(change, stored.After);
        Assert.Equal(new TaskChange(Sweep.Id, Sweep), stored.Before);
        Assert.Equal(made.Workshop, Changes.Replay(new Workshop { Format = 1, Name = Sound.Name, Zone = Sound.Zone },
            (await bench.Store.FindChange(made.Id, 1, Stop))!.After));
        Assert.Null(await bench.Store.FindChange(made.Id, 3, Stop));
    }

    private static TaskChange Note(string note) => new(Sweep.Id, Sweep with { Note = note });

    private static NodaTime.Instant At(StoreBench bench) => bench.Clock.Now;

    private static (string, string, int) WorkshopAt(Workshop workshop) => (workshop.Name, workshop.Zone, workshop.Tasks.Count);

    private static Task<EditOutcome> Undo(StoreBench bench, Id workshop) => Undo(bench, workshop, null);

    private static Task<EditOutcome> Undo(StoreBench bench, Id workshop, long? version) =>
        bench.Store.Undo(workshop, version, Maker, Expectation.None, Stop);

    private static Task<EditOutcome> Redo(StoreBench bench, Id workshop) =>
        bench.Store.Redo(workshop, Maker, Expectation.None, Stop);

    private static async Task<string?[]> Notes(
        StoreBench bench, Id workshop, int times, Func<StoreBench, Id, Task<EditOutcome>> act)
    {
        var notes = new string?[times];
        for (var i = 0; i < times; i++)
        {
            notes[i] = Assert.IsType<Made>(await act(bench, workshop)).Now.Workshop.Tasks.Find(Sweep.Id)!.Note;
        }

        return notes;
    }
}
