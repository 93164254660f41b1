using System.Diagnostics.CodeAnalysis;
using Ical.Net;
using NodaTime;
using RecurrenceRule = Ical.Net.DataTypes.RecurrenceRule;

namespace EpisodePlanner.Planning;

/// <summary>One time of a recurrence.</summary>
/// <param name="Wall">The local time the rule names; a clock change may have left it out or shown it twice.</param>
/// <param name="Moment">The moment it means, after RFC 5545 §3.3.5.</param>
public readonly record struct Occurrence(LocalDateTime Wall, Instant Moment);

/// <summary>A recurrence rule: an RFC 5545 RRULE value such as "FREQ=WEEKLY;BYDAY=FR". Immutable.</summary>
/// <remarks>
/// The rule is walked in local time and each time is turned into a moment by the zone, so a slot stays at its local
/// time through clock changes. Rules by the second are refused.
/// </remarks>
public sealed class Recurrence
{
    /// <summary>The most times taken: thirteen years of days, three and a half days of minutes.</summary>
    public const int MostTaken = 5_000;

    private readonly string text;
    private readonly RecurrenceRule rule;

    private Recurrence(string text, RecurrenceRule rule)
    {
        this.text = text;
        this.rule = rule;
    }

    /// <summary>Reads a rule.</summary>
    /// <exception cref="FormatException">
    /// It is not one; the message is the sentence of <see cref="TryParse"/>.
    /// </exception>
    public static Recurrence Parse(string text) =>
        TryParse(text, out var rule, out var problem) ? rule : throw new FormatException(problem);

    /// <summary>Reads a rule, or says in a sentence why it is not one.</summary>
    public static bool TryParse(
        string text, [NotNullWhen(true)] out Recurrence? recurrence, [NotNullWhen(false)] out string? problem)
    {
        problem = Problem(text, out var rule);
        recurrence = rule is null ? null : new Recurrence(text, rule);
        return recurrence is not null;
    }

    /// <summary>The rule's text.</summary>
    public override string ToString() => text;

    /// <summary>
    /// The times of the rule from one moment to another, nearly in order (a time inside a gap can come after the one
    /// that follows it). At most <see cref="MostTaken"/>; the walk starts near <paramref name="from"/>
    /// however long ago <paramref name="first"/> lies.
    /// </summary>
    /// <param name="first">DTSTART, local.</param>
    /// <param name="zone">The zone of the local times.</param>
    /// <param name="from">The first moment wanted.</param>
    /// <param name="to">The first moment not wanted any more.</param>
    public IEnumerable<Occurrence> Occurrences(LocalDateTime first, DateTimeZone zone, Instant from, Instant to)
    {
        // No zone shifts its clocks by more than a day.
        var earliest = from.InZone(zone).LocalDateTime.PlusDays(-1);
        var latest = to.InZone(zone).LocalDateTime.PlusDays(1);
        return new RecurrenceWalk(text, rule)
            .Walls(first, earliest, latest)
            .Select(wall => new Occurrence(wall, TimeAxis.Resolve(wall, zone)))
            .Where(time => from <= time.Moment && time.Moment < to && NotAfterUntil(time, zone));
    }

    private bool NotAfterUntil(Occurrence time, DateTimeZone zone)
    {
        if (rule.Until is not { } until)
        {
            return true;
        }

        var wall = LocalDateTime.FromDateTime(until.Value);
        if (!until.HasTime)
        {
            return time.Wall.Date <= wall.Date;
        }

        return time.Moment <= TimeAxis.Resolve(wall, until.IsUtc ? DateTimeZone.Utc : zone);
    }

    private static string? Problem(string text, out RecurrenceRule? rule)
    {
        rule = null;
        try
        {
            var read = new RecurrenceRule(text);
            var problem = Missing(text, read);
            rule = problem is null ? read : null;
            return problem;
        }
        catch (Exception e) when (e is ArgumentException or FormatException or OverflowException)
        {
            return $"'{text}' is not a recurrence rule; one reads like \"FREQ=WEEKLY;BYDAY=FR\".";
        }
    }

    private static string? Missing(string text, RecurrenceRule rule)
    {
        if (!text.Contains("FREQ=", StringComparison.OrdinalIgnoreCase))
        {
            return $"'{text}' does not say how often; it needs FREQ=DAILY, WEEKLY, MONTHLY or YEARLY.";
        }

        if (rule.Frequency == FrequencyType.Secondly || rule.BySecond.Count > 0)
        {
            return $"'{text}' recurs by the second; a slot can recur by the minute at most.";
        }

        var endsBadly = rule.Until is null && text.Contains("UNTIL", StringComparison.OrdinalIgnoreCase);
        return endsBadly ? $"'{text}' has an UNTIL that is not a date; one reads like \"UNTIL=20271231\"." : null;
    }
}
