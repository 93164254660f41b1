using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Files.Text;

/// <summary>The forms of ids, dates and times.</summary>
internal static class Forms
{
    private const string DatePattern = @"[0-9]{4}-[0-9]{2}-[0-9]{2}";
    private const string TimePattern = @"([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?";

    private const int LastYear = 9_998;

    private static readonly LocalDate SomeDate = new(2000, 1, 1);
    private static readonly Instant SomeMoment = SomeDate.AtMidnight().InUtc().ToInstant();
    private static readonly LocalDatePattern Day = LocalDatePattern.Iso;
    private static readonly LocalTimePattern Minute = LocalTimePattern.CreateWithInvariantCulture("HH':'mm");
    private static readonly LocalTimePattern Second = LocalTimePattern.CreateWithInvariantCulture("HH':'mm':'ss");
    private static readonly InstantPattern Moment =
        InstantPattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss.FFFFFFFFF'Z'");
    private static readonly OffsetDateTimePattern AnyOffset =
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss.FFFFFFFFFo<Z+HH:mm>");

    /// <summary>Ids: "weld-frame".</summary>
    public static TextForm<Id> Ids { get; } = new()
    {
        Wanted = "an id such as \"weld-frame\"",
        Parse = ParseId,
        Format = id => id.ToString(),
        Pattern = "^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$",
        Placeholder = new Id("unread"),
    };

    /// <summary>Dates: "2027-03-05".</summary>
    public static TextForm<LocalDate> Dates { get; } = new()
    {
        Wanted = "a date such as \"2027-03-05\"",
        Parse = ParseDate,
        Format = Day.Format,
        Pattern = $"^{DatePattern}$",
        SchemaFormat = "date",
        Placeholder = SomeDate,
    };

    /// <summary>Times of day: "18:00", or "18:00:30" where seconds matter.</summary>
    public static TextForm<LocalTime> Times { get; } = new()
    {
        Wanted = "a time of day such as \"18:00\"",
        Parse = ParseTime,
        Format = FormatTime,
        Pattern = $"^{TimePattern}$",
    };

    /// <summary>Local dates with a time: "2027-03-05T18:00".</summary>
    public static TextForm<LocalDateTime> DateTimes { get; } = new()
    {
        Wanted = "a local date and time such as \"2027-03-05T18:00\"",
        Parse = ParseDateTime,
        Format = value => $"{Day.Format(value.Date)}T{FormatTime(value.TimeOfDay)}",
        Pattern = $"^{DatePattern}T{TimePattern}$",
        Placeholder = SomeDate.AtMidnight(),
    };

    /// <summary>Moments after RFC 3339: "2027-03-05T18:00:00Z".</summary>
    public static TextForm<Instant> Instants { get; } = new()
    {
        Wanted = "a moment such as \"2027-03-05T18:00:00Z\"",
        Parse = ParseInstant,
        Format = Moment.Format,
        Pattern = $@"^{DatePattern}[Tt][0-9]{{2}}:[0-9]{{2}}:[0-9]{{2}}(\.[0-9]{{1,9}})?([Zz]|[+-][0-9]{{2}}:[0-9]{{2}})$",
        SchemaFormat = "date-time",
        Placeholder = SomeMoment,
    };

    private static Parsed<Id> ParseId(string text)
    {
        if (Id.IsValid(text))
        {
            return new(new Id(text), null);
        }

        var slug = Slug.Of(text);
        var hint = slug.Length > 0 ? $"; perhaps {Say.Quote(slug)}" : "";
        return new(default, $"{Say.Quote(text)} can't be an id: 1 to {Id.MaximumLength} letters (a to z), digits, dots, "
            + $"dashes and underscores, the first a letter or digit{hint}.");
    }

    private static Parsed<LocalDate> ParseDate(string text) =>
        TryDate(text, out var date)
            ? new(date, null)
            : Wrong<LocalDate>(text, "a date of the calendar", "year-month-day, such as \"2027-03-05\"");

    private static Parsed<LocalTime> ParseTime(string text) =>
        TryTime(text, out var time)
            ? new(time, null)
            : Wrong<LocalTime>(text, "a time of day", "hours and minutes from \"00:00\" to \"23:59\", such as \"18:00\"");

    private static Parsed<LocalDateTime> ParseDateTime(string text) =>
        text.Length > 11 && text[10] == 'T' && TryDate(text[..10], out var date) && TryTime(text[11..], out var time)
            ? new(date.At(time), null)
            : Wrong<LocalDateTime>(text, "a local date and time", "\"2027-03-05T18:00\", without an offset");

    private static Parsed<Instant> ParseInstant(string text)
    {
        var parsed = AnyOffset.Parse(text.ToUpperInvariant());
        if (parsed.Success && !text.Contains("T24:", StringComparison.Ordinal) && parsed.Value.Year is > 0 and <= LastYear)
        {
            return new(parsed.Value.ToInstant(), null);
        }

        return text.Contains(":60", StringComparison.Ordinal)
            ? new(SomeMoment, $"{Say.Quote(text)} is a leap second or no time at all; write second 59.")
            : Wrong<Instant>(text, "a moment", "\"2027-03-05T18:00:00Z\", or with an offset such as +01:00 in place of Z");
    }

    private static Parsed<T> Wrong<T>(string text, string what, string right) =>
        new(default!, $"{Say.Quote(text)} is not {what}; write {right}.");

    private static bool TryDate(string text, out LocalDate date)
    {
        var parsed = Day.Parse(text);
        return parsed.TryGetValue(SomeDate, out date) && text.Length == 10 && date.Year is > 0 and <= LastYear;
    }

    private static bool TryTime(string text, out LocalTime time)
    {
        var parsed = (text.Length == 5 ? Minute : Second).Parse(text);
        return parsed.TryGetValue(default, out time);
    }

    private static string FormatTime(LocalTime time) => (time.Second == 0 ? Minute : Second).Format(time);
}
