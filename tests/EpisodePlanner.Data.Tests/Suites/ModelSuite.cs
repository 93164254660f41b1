using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Planning.Tests;
using static EpisodePlanner.Data.Tests.StoreBench;

namespace EpisodePlanner.Data.Tests;

/// <summary>Random changes, undos, redos and restorations: the store and a plain model of it agree, to the byte.</summary>
public abstract class ModelSuite(StoreDatabases databases)
{
    private const int Acts = 250;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task Acts_AgreeWithTheModel(int seed)
    {
        await using var bench = await databases.New();
        var random = new Random(seed);
        var changes = new RandomChange(random);
        var first = WorkshopFile.Order(Sample.Sound);
        var (model, id) = (new StoreModel(first), (await bench.Create(first)).Id);
        StoreBench[] stores = [bench, await bench.Again()];
        var seen = new Dictionary<string, int>();
        for (var i = 0; i < Acts; i++)
        {
            var (expected, outcome) = await Act(stores[random.Next(2)], id, model, changes, random);
            Assert.Equal($"{i} {expected}", $"{i} {outcome.GetType().Name}");
            seen[expected] = seen.GetValueOrDefault(expected) + 1;
            AssertAgrees(model, await stores[random.Next(2)].Now(id));
        }

        AssertAgrees(model, await bench.Cold(id));
        var history = (await bench.Store.History(id, null, int.MaxValue, Stop))!;
        Assert.Equal(model.History, history.Select(line => (line.Act, line.Of, line.IsUndone)));
        Assert.Equal(
            model.Deleted.Select(what => what.ToString()).Order(StringComparer.Ordinal),
            (await bench.Store.Deleted(id, Stop))!.Select(thing => thing.What.ToString()).Order(StringComparer.Ordinal));
        Assert.Superset(new HashSet<string> { nameof(Made), nameof(Broken), nameof(NothingThere) }, seen.Keys.ToHashSet());
        Assert.True(seen[nameof(Made)] > Acts / 4, $"only {seen[nameof(Made)]} acts succeeded");
    }

    private static async Task<(string Expected, EditOutcome Outcome)> Act(
        StoreBench bench, Id id, StoreModel model, RandomChange changes, Random random)
    {
        switch (random.Next(10))
        {
            case 0 or 1:
                return (model.Undo(), await bench.Store.Undo(id, null, Maker, Expectation.None, Stop));
            case 2:
                var version = random.NextInt64(1, model.Version + 2);
                return (model.Undo(version), await bench.Store.Undo(id, version, Maker, Expectation.None, Stop));
            case 3:
                return (model.Redo(), await bench.Store.Redo(id, Maker, Expectation.None, Stop));
            case 4 when model.Deleted.Count > 0:
                var what = model.Deleted.ElementAt(random.Next(model.Deleted.Count));
                return (model.Restore(what), await bench.Store.Restore(id, what, Maker, Stop));
            default:
                var change = changes.Next(model.Now);
                return (model.Make(change), await bench.Try(id, change));
        }
    }

    private static void AssertAgrees(StoreModel model, Snapshot actual)
    {
        Assert.Equal(model.Version, actual.Version);
        Assert.Equal(model.Now, actual.Workshop);
        Assert.Equal(WorkshopFile.Write(model.Now), WorkshopFile.Write(actual.Workshop));
        Assert.Equal(Lines(model.Versions), Lines(actual.Versions));
    }

    private static IEnumerable<string> Lines(IEnumerable<KeyValuePair<Aggregate, long>> versions) =>
        versions.Select(pair => $"{pair.Key} {pair.Value}").Order(StringComparer.Ordinal);
}
