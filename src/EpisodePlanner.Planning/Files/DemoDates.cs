using System.Globalization;
using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files.Shapes;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>Moves a demo through time, so that it is as alive on any day as on the day it was written.</summary>
public static partial class DemoDates
{
    private const int DaysInWeek = 7;
    private const int FirstYear = 1_970;
    private const int LastYear = 2_100;

    /// <summary>
    /// The demo with every date moved by the same whole number of weeks, which brings its anchor to its weekday's last
    /// occurrence on or before today. Moments keep their local wall time; a workshop that is no demo stays as it is.
    /// </summary>
    public static Workshop Move(Workshop workshop, LocalDate today)
    {
        if (workshop.Demo is null || today.Year is < FirstYear or > LastYear)
        {
            return workshop;
        }

        var days = Period.DaysBetween(workshop.Demo.Anchor, today);
        var weeks = (int)Math.Floor((double)days / DaysInWeek);
        var zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(workshop.Zone) ?? DateTimeZone.Utc;
        var moved = (Workshop)ShapeFactory.Record<Workshop>().Rebuild(workshop, leaf => Move(leaf, weeks, zone));
        return moved with { SlotRules = moved.SlotRules.Select(rule => Move(rule, weeks)).ToKeyed() };
    }

    private static object Move(object leaf, int weeks, DateTimeZone zone) => leaf switch
    {
        LocalDate date => date.PlusWeeks(weeks),
        LocalDateTime moment => moment.PlusWeeks(weeks),
        Instant moment => moment.InZone(zone).LocalDateTime.PlusWeeks(weeks).InZoneLeniently(zone).ToInstant(),
        _ => leaf,
    };

    private static SlotRule Move(SlotRule rule, int weeks) => rule with
    {
        Rule = Until().Replace(rule.Rule, until => Move(until.Value, weeks)),
    };

    private static string Move(string date, int weeks) =>
        LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd").Parse(date) is { Success: true } parsed
            ? parsed.Value.PlusWeeks(weeks).ToString("uuuuMMdd", CultureInfo.InvariantCulture)
            : date;

    [GeneratedRegex("(?<=UNTIL=)[0-9]{8}", RegexOptions.IgnoreCase)]
    private static partial Regex Until();
}
