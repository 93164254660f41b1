using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Writing;

/// <summary>Checks what was expected of a workshop.</summary>
internal static class Expecting
{
    /// <summary>The aggregates that must be looked at.</summary>
    public static IEnumerable<Aggregate> Looked(Expectation expects, Change change) => expects switch
    {
        Expectation.Present present => [present.What],
        Expectation.Absent absent => [absent.What],
        Expectation.UntouchedSince => change.Touches(),
        _ => [],
    };

    /// <summary>What is not as expected; null where all is.</summary>
    public static Stale? Check(Expectation expects, Change change, Snapshot now, Tombstones deleted)
    {
        if (expects is Expectation.WorkshopAt at)
        {
            return Fits(at.Versions, now.Version) ? null : new Stale(now, []);
        }

        var stale = Looked(expects, change).Where(what => !Holds(expects, what, now, deleted)).ToValueList();
        return stale.Count == 0 ? null : Stale(now, stale, deleted);
    }

    /// <summary>The outcome that names some aggregates as they are now.</summary>
    public static Stale Stale(Snapshot now, IEnumerable<Aggregate> things, Tombstones deleted) => new(
        now,
        things.Select(what => new StaleThing(what, now.VersionOf(what), deleted.Find(what)?.DeletedAt)).ToValueList());

    private static bool Holds(Expectation expects, Aggregate what, Snapshot now, Tombstones deleted) => expects switch
    {
        Expectation.Present present => now.VersionOf(what) is { } version && Fits(present.Versions, version),
        Expectation.Absent => now.VersionOf(what) is null,
        Expectation.UntouchedSince since => (now.VersionOf(what) ?? deleted.Find(what)?.Version ?? 0) <= since.Version,
        _ => true,
    };

    private static bool Fits(ValueList<long> versions, long version) => versions.Count == 0 || versions.Contains(version);
}
