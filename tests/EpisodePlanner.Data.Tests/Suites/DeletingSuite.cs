using EpisodePlanner.Planning;
using NodaTime;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>What is deleted can be brought back for thirty days, and is then forgotten.</summary>
public abstract class DeletingSuite(StoreDatabases databases)
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;
    private static readonly Upload Upload = Sound.Uploads.Single();
    private static readonly Duration JustBefore = WorkshopStore.DeletedKept - Duration.FromMilliseconds(1);

    [Fact]
    public async Task Restore_BringsAThingBackAsItWas()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, new Batch([new TaskChange(Sweep.Id, null), new UploadChange(Upload.Id, null)]));

        var deleted = (await bench.Store.Deleted(made.Id, Stop))!;
        await Restore(bench, made.Id, ThingKinds.Uploads.Of(Upload.Id));
        var back = Assert.IsType<Made>(await Restore(bench, made.Id, ThingKinds.Tasks.Of(Sweep.Id)));

        Assert.Equal(["tasks/sweep", "uploads/up-1"], deleted.Select(thing => thing.What.ToString()));
        Assert.Equal([Sweep.Name, "buggy, 2026-01-09"], deleted.Select(thing => thing.Name));
        Assert.All(deleted, thing => Assert.Equal((2, bench.Clock.Now + Duration.FromDays(30)), (thing.Version, thing.KeptUntil)));
        Assert.Equal(made.Workshop, back.Now.Workshop);
        Assert.Equal((Act.Restore, $"Brought back task \u201c{Sweep.Name}\u201d"), (back.Change.Line.Act, back.Change.Line.Says));
        Assert.Empty((await bench.Store.Deleted(made.Id, Stop))!);
        Same.Snapshots(back.Now, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Restore_WhatIsThereOrNeverWas_IsNothing()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        Assert.IsType<NothingThere>(await Restore(bench, made.Id, ThingKinds.Tasks.Of(Sweep.Id)));
        Assert.IsType<NothingThere>(await Restore(bench, made.Id, ThingKinds.Tasks.Of(Id("dust"))));
        Assert.IsType<NothingThere>(await Restore(bench, made.Id, new Aggregate("ghosts", Id("dust"))));
    }

    [Fact]
    public async Task Restore_WhatNoLongerFits_IsToldWhy()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var mop = Sweep with { Id = Id("mop") };
        var linked = Sweep with { Id = Id("dust"), Links = [new TaskLink { Task = mop.Id }] };
        await bench.Make(made.Id, new Batch([new TaskChange(mop.Id, mop), new TaskChange(linked.Id, linked)]));
        await bench.Make(made.Id, new TaskChange(linked.Id, null));
        await bench.Make(made.Id, new TaskChange(mop.Id, null));

        var broken = Assert.IsType<Broken>(await Restore(bench, made.Id, ThingKinds.Tasks.Of(linked.Id)));

        Assert.Equal("$.tasks['dust'].links[0].task", broken.Reasons.Single().Where);
    }

    [Fact]
    public async Task Purge_ForgetsAfterThirtyDays_AndNeverBefore()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var gone = await bench.Make(made.Id, new Batch([new TaskChange(Sweep.Id, null), new UploadChange(Upload.Id, null)]));

        bench.Clock.Move(JustBefore);
        Assert.Equal(0, await bench.Store.Purge(Stop));
        Assert.Equal(2, (await bench.Store.Deleted(made.Id, Stop))!.Count);
        bench.Clock.Move(Duration.FromMilliseconds(1));
        Assert.Equal(2, await bench.Store.Purge(Stop));

        Assert.Empty((await bench.Store.Deleted(made.Id, Stop))!);
        Assert.IsType<NothingThere>(await Restore(bench, made.Id, ThingKinds.Tasks.Of(Sweep.Id)));
        Same.Snapshots(gone.Now, await bench.Cold(made.Id));
        Assert.IsType<Made>(await bench.Store.Undo(made.Id, 2, Maker, Expectation.None, Stop));
        Assert.Equal(made.Workshop, (await bench.Cold(made.Id)).Workshop);
    }

    [Fact]
    public async Task Delete_ThenRestore_OfAWorkshop()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var other = await bench.Again();

        var deleted = Assert.IsType<Made>(await bench.Store.Delete(made.Id, Maker, Expectation.None, Stop));
        Assert.Equal(new Lookup(null, bench.Clock.Now), await other.Store.Find(made.Id, Stop));
        Assert.Equal(new NoWorkshop(bench.Clock.Now), await other.Try(made.Id, new NameChange("Shed")));
        Assert.Empty(await bench.Store.List(Stop));
        Assert.Equal(2, Assert.Single(await bench.Store.ListDeleted(Stop)).Version);
        var back = Assert.IsType<Made>(await other.Store.Restore(made.Id, Maker, Stop));

        Assert.Equal((Act.Delete, Act.Restore), (deleted.Change.Line.Act, back.Change.Line.Act));
        Assert.Equal((3, made.Workshop), (back.Now.Version, back.Now.Workshop));
        Assert.IsType<NothingThere>(await bench.Store.Restore(made.Id, Maker, Stop));
        Assert.IsType<NothingThere>(await bench.Store.Undo(made.Id, null, Maker, Expectation.None, Stop));
        Same.Snapshots(back.Now, await bench.Now(made.Id));
        Same.Snapshots(back.Now, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Delete_OfAWorkshopThatWasChanged_IsStale()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, new NameChange("Shed"));

        Assert.IsType<Stale>(await bench.Store.Delete(made.Id, Maker, new Expectation.WorkshopAt([1]), Stop));
        Assert.IsType<Made>(await bench.Store.Delete(made.Id, Maker, new Expectation.WorkshopAt([1, 2]), Stop));
    }

    [Fact]
    public async Task Purge_ForgetsAWorkshopWithAllItsRows()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var kept = await bench.Create(Sound);
        await bench.Store.Delete(made.Id, Maker, Expectation.None, Stop);

        bench.Clock.Move(JustBefore);
        Assert.Equal(0, await bench.Store.Purge(Stop));
        bench.Clock.Move(Duration.FromMilliseconds(1));

        // All things, about, settings, two changes and the workshop.
        Assert.Equal(made.Versions.Count + 3, await bench.Store.Purge(Stop));
        Assert.Equal(new Lookup(null, null), await bench.Store.Find(made.Id, Stop));
        Assert.Equal(new NoWorkshop(null), await bench.Store.Restore(made.Id, Maker, Stop));
        Assert.Empty(await bench.Store.ListDeleted(Stop));
        Same.Snapshots(kept, await bench.Cold(kept.Id));
    }

    private static Task<EditOutcome> Restore(StoreBench bench, Id workshop, Aggregate what) =>
        bench.Store.Restore(workshop, what, Maker, Stop);
}
