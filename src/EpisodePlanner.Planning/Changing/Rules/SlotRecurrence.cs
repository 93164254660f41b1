using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning;

/// <summary>
/// What a slot may ask of a <see cref="Recurrence"/>, read strictly: days at most, and nothing that a reader could pass over.
/// </summary>
internal sealed class SlotRecurrence
{
    private static readonly LocalDatePattern Dates = LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd");
    private static readonly string[] TimeParts = ["BYHOUR", "BYMINUTE", "BYSECOND"];

    private readonly Recurrence recurrence;

    private SlotRecurrence(Recurrence recurrence) => this.recurrence = recurrence;

    /// <summary>Reads a rule; where it can't be read, the problem says why and what would be right.</summary>
    public static SlotRecurrence? Read(string rule, out string problem)
    {
        var parts = rule.Split(';');
        problem = Problem(parts) ?? "";
        if (problem.Length == 0 && TryParse(rule) is { } recurrence)
        {
            return new SlotRecurrence(recurrence);
        }

        if (problem.Length == 0)
        {
            var culprit = parts.FirstOrDefault(part => TryParse(Alone(part)) is null);
            problem = culprit is null
                ? "its parts can't stand together; COUNT and UNTIL exclude each other"
                : $"'{culprit}' is not understood";
        }

        return null;
    }

    /// <summary>Whether it ever comes on a day that is not left out, from its first day to the last day given.</summary>
    public bool EverOccurs(LocalDate from, ValueList<LocalDate> except, LocalDate last)
    {
        var leftOut = except.ToHashSet();
        return recurrence
            .Occurrences(from.AtMidnight(), DateTimeZone.Utc, from.AtMidnight().InUtc().ToInstant(), last.PlusDays(1).AtMidnight().InUtc().ToInstant())
            .Any(time => !leftOut.Contains(time.Wall.Date));
    }

    private static string? Problem(string[] parts)
    {
        var names = parts.Select(Name).ToArray();
        if (parts.FirstOrDefault(part => part.IndexOf('=') is <= 0 || part.EndsWith('=')) is { } odd)
        {
            return $"'{odd}' is not a part of the form NAME=VALUE";
        }

        if (names.Distinct().Count() < names.Length)
        {
            return "a part is written twice";
        }

        if (!names.Contains("FREQ"))
        {
            return "it must say FREQ";
        }

        return names.FirstOrDefault(TimeParts.Contains) is { } timePart
            ? $"'{timePart}' is not for slots; the time of day is in 'at'"
            : FrequencyProblem(parts);
    }

    private static string? FrequencyProblem(string[] parts)
    {
        var values = parts.ToDictionary(Name, part => part[(part.IndexOf('=') + 1)..].ToUpperInvariant());
        if (values["FREQ"] is "HOURLY" or "MINUTELY" or "SECONDLY")
        {
            return "a slot comes at most daily; use DAILY, WEEKLY, MONTHLY or YEARLY";
        }

        var numbered = values.TryGetValue("BYDAY", out var days) && days.Any(char.IsAsciiDigit);
        return values["FREQ"] switch
        {
            "WEEKLY" when values.ContainsKey("BYMONTHDAY") => "a weekly rule can't have BYMONTHDAY",
            "WEEKLY" or "DAILY" when numbered => "numbered days belong to monthly and yearly rules",
            _ when values.TryGetValue("UNTIL", out var until) && !IsDate(until) => "UNTIL must be a date like 20271231",
            _ => null,
        };
    }

    private static bool IsDate(string until) =>
        until.Length is 8 or 15 or 16
        && Dates.Parse(until[..8]).Success
        && until[8..].All(c => c is 'T' or 'Z' or (>= '0' and <= '9'));

    private static string Name(string part) => part.Split('=')[0].ToUpperInvariant();

    private static string Alone(string part) => Name(part) == "FREQ" ? part : $"FREQ=YEARLY;{part}";

    private static Recurrence? TryParse(string rule) => Recurrence.TryParse(rule, out var recurrence, out _) ? recurrence : null;
}
