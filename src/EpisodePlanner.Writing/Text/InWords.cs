using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Writing;

/// <summary>Dates, lengths and lists as one would say them.</summary>
internal static class InWords
{
    private const int MinutesAnHour = 60;
    private const int MinutesADay = 1_440;
    private const int HoursUpTo = 48;

    private static readonly LocalDatePattern Date = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM uuuu");
    private static readonly LocalTimePattern Time = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>"Friday 4 December 2026".</summary>
    public static string Day(LocalDate date) => Date.Format(date);

    /// <summary>"Friday 4 December 2026 at 17:00".</summary>
    public static string Moment(ZonedDateTime moment) => $"{Day(moment.Date)} at {Clock(moment)}";

    /// <summary>"17:00".</summary>
    public static string Clock(ZonedDateTime moment) => Time.Format(moment.TimeOfDay);

    /// <summary>"for Friday 4 December 2026, 17:00 to 19:00", or "from … to …" with both moments in full.</summary>
    public static string Span(ZonedDateTime from, ZonedDateTime to) => from.Date == to.Date
        ? $"for {Day(from.Date)}, {Clock(from)} to {Clock(to)}"
        : $"from {Moment(from)} to {Moment(to)}";

    /// <summary>Work: "45 min", "3 h", "14 h 30 min".</summary>
    public static string Work(int minutes) => (minutes / MinutesAnHour, minutes % MinutesAnHour) switch
    {
        (0, var rest) => $"{rest} min",
        (var hours, 0) => string.Create(CultureInfo.InvariantCulture, $"{hours:#,0} h"),
        var (hours, rest) => string.Create(CultureInfo.InvariantCulture, $"{hours:#,0} h {rest} min"),
    };

    /// <summary>Time that passes: as work up to two days, then "3 days", "2 days 4 h".</summary>
    public static string Passing(int minutes)
    {
        if (minutes < HoursUpTo * MinutesAnHour)
        {
            return Work(minutes);
        }

        var hours = minutes % MinutesADay / MinutesAnHour;
        return Days(minutes / MinutesADay) + (hours == 0 ? "" : $" {hours} h");
    }

    /// <summary>"1,350".</summary>
    public static string Number(int number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>"1 day", "3 days".</summary>
    public static string Days(int days) => days == 1 ? "1 day" : $"{days} days";

    /// <summary>A name between quotation marks.</summary>
    public static Markdown Quoted(string name) => Markdown.Of($"“{name}”");

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static Markdown List(IReadOnlyList<Markdown> items) => items.Count switch
    {
        0 => default,
        1 => items[0],
        _ => Markdown.Of($"{Markdown.Join(", ", items.Take(items.Count - 1))} and {items[^1]}"),
    };

    /// <summary>The first few of a list, and how many more there are.</summary>
    public static Markdown ShortList(IReadOnlyList<Markdown> items, int most) => items.Count <= most + 1
        ? List(items)
        : Markdown.Of($"{Markdown.Join(", ", items.Take(most))} and {items.Count - most} more");
}
