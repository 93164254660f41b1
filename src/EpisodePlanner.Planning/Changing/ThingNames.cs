using System.Globalization;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Planning.Files.Text;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What a thing is called in a sentence.</summary>
public static class ThingNames
{
    /// <summary>The name that the maker gave, or what the thing is about: "Weld frame", "2027-03-05".</summary>
    public static string Of(IThing thing) => thing switch
    {
        Person person => person.Name,
        Machine machine => machine.Name,
        Place place => place.Name,
        Series series => series.Name,
        WorkTask task => task.Name,
        Episode episode => episode.Title,
        SlotRule rule => $"{rule.Rule} from {Day(rule.From)}",
        Upload upload => $"{upload.Series}, {Day(upload.Date)}",
        LogEntry entry => $"{entry.Task ?? entry.Episode}, {Day(entry.At.InUtc().Date)}",
        ToldDate told => $"{told.Episode}, {Day(told.Date)}, to {told.To}",
        TimedLine line => line.Text,
        Booking booking => $"{booking.Place}, {Day(booking.From.Date)}",
        _ => thing.Id.ToString(),
    };

    /// <summary>An id that no thing of a kind has, made of a name: "weld-frame", "weld-frame-2".</summary>
    /// <param name="name">The name.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="workshop">The workshop.</param>
    public static Id IdFor(string name, ThingKind kind, Workshop workshop)
    {
        var slug = Slug.Of(name) is { Length: > 0 } found ? found : kind.Word.Replace(' ', '-');
        return new Names(kind.All(workshop).Select(thing => thing.Id)).Next(slug);
    }

    private static string Day(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
