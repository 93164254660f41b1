using System.Globalization;
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

    private static string Day(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
