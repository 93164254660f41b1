using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using NodaTime;
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
        Same.Snapshots(made, cold);
    }

    [Fact]
    public async Task Make_ChangesTheThingAndItsVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        bench.Clock.Move(Duration.FromMinutes(5));

        var changed = await bench.Make(made.Id, new TaskChange(Sweep.Id, Sweep with { Note = "twice" }));

        Assert.Equal(2, changed.Now.Version);
        Assert.Equal(2, changed.Now.VersionOf(ThingKinds.Tasks.Of(Sweep.Id)));
        Assert.Equal(1, changed.Now.VersionOf(Aggregate.About));
        Assert.Equal(Instant.FromUtc(2027, 3, 1, 8, 5), changed.Now.PlannedAt);
        Same.Snapshots(changed.Now, await bench.Now(made.Id));
        Same.Snapshots(changed.Now, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Make_WhatIsSoAlready_IsNotStored()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        var outcome = await bench.Try(made.Id, new Batch([new NameChange(Sound.Name), new TaskChange(Sweep.Id, Sweep)]));

        Assert.Equal(made.Version, Assert.IsType<Unchanged>(outcome).Now.Version);
        Assert.Single((await bench.Store.History(made.Id, null, 10, StoreBench.Stop))!);
    }

    [Fact]
    public async Task Make_WhatBreaksRules_IsToldWithEveryReason()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        var broken = Assert.IsType<Broken>(await bench.Try(
            made.Id, new Batch([new PersonChange(Id("bob"), null), new PlaceChange(Id("roof"), null)])));

        Assert.Equal(["$.people['bob']", "$.places['roof']"], broken.Reasons.Select(reason => reason.Where));
        Same.Snapshots(made, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Make_ABatch_IsOneVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var dust = Sweep with { Id = Id("dust") };
        var deep = new Batch([new NameChange("Shed"), new Batch([new TaskChange(dust.Id, dust), new TaskChange(Sweep.Id, null)])]);

        var changed = await bench.Make(made.Id, deep);

        Assert.Equal(2, changed.Now.Version);
        Assert.Equal([2L, 2L, null], new[] { Aggregate.About, Of("dust"), Of("sweep") }.Select(changed.Now.VersionOf));
        Same.Snapshots(changed.Now, await bench.Cold(made.Id));
        Assert.Equal("Shed", Assert.Single(await bench.Store.List(StoreBench.Stop)).Name);
    }

    [Fact]
    public async Task Make_AnUnknownWorkshop()
    {
        await using var bench = await databases.New();

        Assert.Equal(new NoWorkshop(null), await bench.Try(Id("nobody"), new NameChange("Shed")));
        Assert.Equal(new Lookup(null, null), await bench.Store.Find(Id("nobody"), StoreBench.Stop));
        Assert.Null(await bench.Store.History(Id("nobody"), null, 9, StoreBench.Stop));
        Assert.Null(await bench.Store.FindChange(Id("nobody"), 1, StoreBench.Stop));
        Assert.Null(await bench.Store.Deleted(Id("nobody"), StoreBench.Stop));
    }

    [Fact]
    public async Task Create_AnUnsoundWorkshop_IsRefusedWithReasons()
    {
        await using var bench = await databases.New();

        var outcome = await bench.Store.Create(Sound with { Zone = "Moon/Base" }, StoreBench.Maker, null, StoreBench.Stop);

        Assert.Equal("$.zone", Assert.IsType<Broken>(outcome).Reasons.Single().Where);
        Assert.Empty(await bench.Store.List(StoreBench.Stop));
    }

    [Fact]
    public async Task Create_TheSameWorkshopTwice_MakesTwo()
    {
        await using var bench = await databases.New();

        var first = await bench.Create(Sound);
        var second = await bench.Create(Sound);
        await bench.Make(second.Id, new NameChange("Another"));

        Assert.Equal(["Another", Sound.Name], (await bench.Store.List(StoreBench.Stop)).Select(line => line.Name));
        Same.Snapshots(first, await bench.Cold(first.Id));
    }

    [Fact]
    public async Task Find_KeepsMomentsAndNumbersToTheLastDigit()
    {
        await using var bench = await databases.New();
        var at = Instant.FromUtc(2027, 1, 5, 18, 0) + Duration.FromNanoseconds(123_456_789);
        var workshop = Sound with
        {
            Log = [.. Sound.Log.Select(entry => entry with { At = at, Note = "Gr\u00fc\u00dfe \ud83d\udd27\n\t\"'\\" })],
            ToldDates = [.. Sound.ToldDates.Select(told => told with { Odds = 0.1234567890123456789012345678m })],
        };

        var made = await bench.Create(workshop);

        Same.Snapshots(made, await bench.Cold(made.Id));
        Assert.Equal(WorkshopFile.Write(workshop), WorkshopFile.Write((await bench.Cold(made.Id)).Workshop));
    }

    private static Aggregate Of(string task) => ThingKinds.Tasks.Of(Id(task));
}
