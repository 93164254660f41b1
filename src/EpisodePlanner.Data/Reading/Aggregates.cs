using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Reading;

/// <summary>A workshop seen as the aggregates of which it is stored.</summary>
internal static class Aggregates
{
    /// <summary>All that a workshop consists of.</summary>
    public static IEnumerable<Aggregate> All(Workshop workshop)
    {
        var things = ThingKinds.All.SelectMany(kind => kind.All(workshop).Select(thing => kind.Of(thing.Id)));
        IEnumerable<Aggregate> singles = workshop.Accepted is null
            ? [Aggregate.About, Aggregate.Settings]
            : [Aggregate.About, Aggregate.Settings, Aggregate.Accepted];
        return singles.Concat(things);
    }

    /// <summary>What is stored of an aggregate; null where it does not exist.</summary>
    public static object? Find(Workshop workshop, Aggregate what) =>
        what == Aggregate.About ? AboutBody.Of(workshop)
        : what == Aggregate.Settings ? workshop.Settings
        : what == Aggregate.Accepted ? workshop.Accepted
        : ThingKinds.Find(what.Kind)?.Find(workshop, what.Id);

    /// <summary>What of the things touched differs between two workshops.</summary>
    public static IReadOnlyList<Aggregate> Changed(Workshop before, Workshop after, IEnumerable<Aggregate> touched) =>
        [.. touched.Where(what => !Equals(Find(before, what), Find(after, what)))];
}
