using System.Collections.Immutable;
using EpisodePlanner.Data.Reading;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Tests;

public class SnapshotCacheTests
{
    [Fact]
    public void Put_ForgetsWhatWasUsedLongestAgo()
    {
        var cache = new SnapshotCache(mostThings: 25);
        cache.Put(Dated("a", 1, things: 10));
        cache.Put(Dated("b", 1, things: 10));
        cache.Find(new Id("a"));

        cache.Put(Dated("c", 1, things: 10));

        Assert.Equal([true, false, true], Found(cache, "a", "b", "c"));
    }

    [Fact]
    public void Put_KeepsOneThatIsLargerThanAllRoom()
    {
        var cache = new SnapshotCache(mostThings: 5);
        cache.Put(Dated("a", 1, things: 3));

        cache.Put(Dated("b", 1, things: 30));

        Assert.Equal([false, true], Found(cache, "a", "b"));
    }

    [Fact]
    public void Put_AnOlderVersion_IsNotKept()
    {
        var cache = new SnapshotCache(mostThings: 100);
        cache.Put(Dated("a", 2, things: 1));

        cache.Put(Dated("a", 1, things: 1));

        Assert.Equal(2, cache.Find(new Id("a"))!.Snapshot.Version);
        cache.Remove(new Id("a"));
        Assert.Null(cache.Find(new Id("a")));
    }

    [Fact]
    public void Put_ANewerVersion_TakesThePlaceAndTheRoom()
    {
        var cache = new SnapshotCache(mostThings: 20);
        for (var version = 1; version < 50; version++)
        {
            cache.Put(Dated("a", version, things: 10));
            cache.Put(Dated("b", version, things: 10));
        }

        Assert.Equal([true, true], Found(cache, "a", "b"));
    }

    private static IEnumerable<bool> Found(SnapshotCache cache, params string[] ids) =>
        ids.Select(id => cache.Find(new Id(id)) is not null);

    private static DatedSnapshot Dated(string id, long version, int things)
    {
        var workshop = new Workshop { Format = 1, Name = id, Zone = "Europe/Dublin" };
        var versions = Enumerable.Range(0, things).ToImmutableDictionary(i => ThingKinds.Tasks.Of(new Id($"t{i}")), _ => version);
        return new DatedSnapshot(new Snapshot(new Id(id), workshop, version, default, versions), default);
    }
}
