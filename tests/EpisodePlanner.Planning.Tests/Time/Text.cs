using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Tests;

/// <summary>Times written as text, so that tests read like the tables they come from.</summary>
internal static class Text
{
    public static Instant Moment(string text) => InstantPattern.ExtendedIso.Parse(text).Value;

    public static LocalDateTime Local(string text) => LocalDateTimePattern.ExtendedIso.Parse(text).Value;

    public static LocalDate Day(string text) => LocalDatePattern.Iso.Parse(text).Value;

    public static LocalTime Time(string text) => LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text).Value;

    public static TimeAxis Axis(string plannedAt, string zone, int days) =>
        new(Moment(plannedAt), DateTimeZoneProviders.Tzdb[zone], days * 1_440);
}
