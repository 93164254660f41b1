using EpisodePlanner.Planning;
using NodaTime;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>Drafts beside the real plan.</summary>
public abstract class SupposeSuite(StoreDatabases databases)
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Fact]
    public async Task Put_KeepsADraft_AndLeavesTheWorkshop()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        var kept = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one")), Stop)).Kept!;
        bench.Clock.Move(Duration.FromMinutes(1));
        var second = (await bench.Supposes.Put(made.Id, Draft("Untidy", Note("two")), Stop)).Kept!;

        var cold = await bench.Again();
        Assert.Equal((1L, 1L, "Tidy", Maker), (kept.Version, kept.Base, kept.Name, kept.Who));
        Assert.Equal([second, kept], (await cold.Supposes.List(made.Id, Stop))!);
        Assert.Equal(kept, await cold.Supposes.Find(made.Id, kept.Id, Stop));
        Same.Snapshots(made, await bench.Cold(made.Id));
    }

    [Fact]
    public async Task Put_InThePlaceOfAnother_UnderItsVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var first = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one")), Stop)).Kept!;
        var next = Draft("Tidy", Note("two")) with { Id = first.Id, Versions = [1] };

        var second = await bench.Supposes.Put(made.Id, next, Stop);
        var third = await bench.Supposes.Put(made.Id, next, Stop);

        Assert.Equal((2L, false), (second.Kept!.Version, second.IsStale));
        Assert.Equal((second.Kept, true), (third.Kept, third.IsStale));
        Assert.True((await bench.Supposes.Put(made.Id, next with { Id = Id("other") }, Stop)).IsMissing);
        Assert.Equal(1, (await bench.Supposes.Put(made.Id, next with { Id = Id("other"), Versions = [] }, Stop)).Kept!.Version);
    }

    [Fact]
    public async Task Put_OfWhatBreaksRules_IsNotStored()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        var broken = await bench.Supposes.Put(made.Id, Draft("Roofless", new PlaceChange(Id("roof"), null)), Stop);
        var future = await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one")) with { Base = 2 }, Stop);

        Assert.Equal(["$.places['roof']"], broken.Reasons.Select(reason => reason.Where));
        Assert.Equal(["$.base"], future.Reasons.Select(reason => reason.Where));
        Assert.Empty((await bench.Supposes.List(made.Id, Stop))!);
    }

    [Fact]
    public async Task Put_Repeated_MakesOneDraft()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = Draft("Tidy", Note("one")) with { Key = new RequestKey("k", "abc") };

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => bench.Supposes.Put(made.Id, draft, Stop)));

        Assert.Single(outcomes.Select(outcome => outcome.Kept!).Distinct());
        Assert.Single((await bench.Supposes.List(made.Id, Stop))!);
        Assert.True((await bench.Supposes.Put(made.Id, draft with { Key = new RequestKey("k", "abd") }, Stop)).IsKeyReused);
        Assert.IsType<KeyReused>(await bench.Try(made.Id, new NameChange("Shed"), null, draft.Key));
    }

    [Fact]
    public async Task Drop_UnderItsVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one")), Stop)).Kept!;

        Assert.True((await bench.Supposes.Drop(made.Id, draft.Id, [2], Stop)).IsStale);
        Assert.Equal(new SupposeOutcome(null, false, false, []), await bench.Supposes.Drop(made.Id, draft.Id, [1], Stop));
        Assert.True((await bench.Supposes.Drop(made.Id, draft.Id, [], Stop)).IsMissing);
        Assert.Null(await bench.Supposes.Find(made.Id, draft.Id, Stop));
        Assert.Null(await bench.Supposes.Replay(made.Id, draft.Id, Stop));
    }

    [Fact]
    public async Task Replay_OnTheWorkshopAsItIs()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one"), new NameChange("Shed")), Stop)).Kept!;
        await bench.Make(made.Id, new ZoneChange("Europe/Lisbon"));

        var replayed = (await bench.Supposes.Replay(made.Id, draft.Id, Stop))!;

        Assert.Equal(("Shed", "Europe/Lisbon"), (replayed.Draft!.Name, replayed.Draft.Zone));
        Assert.Equal((Sound.Name, 2L), (replayed.Now.Workshop.Name, replayed.Now.Version));
        Assert.Equal([new StaleThing(Aggregate.About, 2, null)], replayed.ChangedSince);
        Assert.Empty(replayed.Reasons);
    }

    [Fact]
    public async Task Replay_WhereItNoLongerFits()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Tidy", new TaskChange(Sweep.Id, null)), Stop)).Kept!;
        await bench.Make(made.Id, new TaskChange(Sweep.Id, null));

        var replayed = (await bench.Supposes.Replay(made.Id, draft.Id, Stop))!;

        Assert.Null(replayed.Draft);
        Assert.Equal(["$.tasks['sweep']"], replayed.Reasons.Select(reason => reason.Where));
        Assert.Equal([new StaleThing(ThingKinds.Tasks.Of(Sweep.Id), null, bench.Clock.Now)], replayed.ChangedSince);
    }

    [Fact]
    public async Task Keep_MakesItRealAndDropsIt()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one"), new NameChange("Shed")), Stop)).Kept!;
        await bench.Make(made.Id, new SettingsChange(new Settings { Maker = "Anna" }));

        var kept = Assert.IsType<Made>(await bench.Supposes.Keep(made.Id, draft.Id, Maker, Stop));

        Assert.Equal((3L, "Shed"), (kept.Now.Version, kept.Now.Workshop.Name));
        Assert.Equal(Act.Keep, kept.Change.Line.Act);
        Assert.StartsWith("Kept draft \u201cTidy\u201d: changed task", kept.Change.Line.Says, StringComparison.Ordinal);
        Assert.Null(await bench.Supposes.Find(made.Id, draft.Id, Stop));
        Assert.IsType<NothingThere>(await bench.Supposes.Keep(made.Id, draft.Id, Maker, Stop));
        Assert.IsType<Made>(await bench.Store.Undo(made.Id, null, Maker, Expectation.None, Stop));
        Assert.Equal(Sound.Name, (await bench.Cold(made.Id)).Workshop.Name);
    }

    [Fact]
    public async Task Keep_OfWhatWasChangedSince_IsStale()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Tidy", Note("one")), Stop)).Kept!;
        await bench.Make(made.Id, Note("two"));

        var stale = Assert.IsType<Stale>(await bench.Supposes.Keep(made.Id, draft.Id, Maker, Stop));

        Assert.Equal([new StaleThing(ThingKinds.Tasks.Of(Sweep.Id), 2, null)], stale.Things);
        Assert.NotNull(await bench.Supposes.Find(made.Id, draft.Id, Stop));
    }

    [Fact]
    public async Task Keep_OfWhatIsSoAlready_DropsIt()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, Draft("Nothing", new NameChange(Sound.Name)), Stop)).Kept!;

        Assert.IsType<Unchanged>(await bench.Supposes.Keep(made.Id, draft.Id, Maker, Stop));
        Assert.Null(await bench.Supposes.Find(made.Id, draft.Id, Stop));
    }

    private static SupposeDraft Draft(string name, params Change[] changes) =>
        new(null, [], name, null, new Batch([.. changes]), Maker, null);

    private static TaskChange Note(string note) => new(Sweep.Id, Sweep with { Note = note });
}
