using System.Globalization;
using EpisodePlanner.Planning.Files.Shapes;
using EpisodePlanner.Planning.Files.Text;
using NodaTime;

namespace EpisodePlanner.Planning.Files;

/// <summary>
/// Chooses ids for things that a hand-written file leaves without: the slug of the name, or kind and date; made unique
/// with -2, -3 … The choice does not depend on the order of the array: things of one slug are numbered by content.
/// </summary>
internal static class Naming
{
    /// <summary>The things, each with an id that is neither taken nor used twice.</summary>
    public static T[] Complete<T>(T[] things, RecordShape<T> shape, IEnumerable<Id> taken)
        where T : class, IThing
    {
        if (!things.Any(thing => thing.Id.IsEmpty))
        {
            return things;
        }

        var names = new Names(taken.Concat(things.Select(thing => thing.Id)));
        var nameless = Enumerable.Range(0, things.Length)
            .Where(i => things[i].Id.IsEmpty)
            .Select(i => (Index: i, Stem: Stem(things[i], i)))
            .OrderBy(item => item.Stem, StringComparer.Ordinal)
            .ThenBy(item => things[item.Index], Comparer<T>.Create(shape.Compare))
            .ToList();
        var named = (T[])things.Clone();
        foreach (var (index, stem) in nameless)
        {
            named[index] = shape.With(things[index], "id", names.Next(stem));
        }

        return named;
    }

    private static string Stem(IThing thing, int index) => thing switch
    {
        Stage => (index + 1).ToString(CultureInfo.InvariantCulture),
        Person person => Stem(person.Name, "person"),
        Machine machine => Stem(machine.Name, "machine"),
        Place place => Stem(place.Name, "place"),
        Series series => Stem(series.Name, "series"),
        Milestone milestone => Stem(milestone.Name, "milestone"),
        WorkTask task => Stem(task.Name, "task"),
        Shot shot => Stem(shot.Name, "shot"),
        Episode episode => Stem(episode.Title, "episode"),
        TimedLine line => Stem(line.Text, "line"),
        SlotRule rule => Dated("slot", rule.From),
        Upload upload => Dated("upload", upload.Date),
        LogEntry entry => Dated("log", entry.At.InUtc().Date),
        ToldDate told => Dated("told", told.ToldOn),
        Booking booking => Dated("booking", booking.From.Date),
        _ => "thing",
    };

    private static string Stem(string name, string kind) => Slug.Of(name) is { Length: > 0 } slug ? slug : kind;

    private static string Dated(string kind, LocalDate date) =>
        $"{kind}-{date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}";
}
