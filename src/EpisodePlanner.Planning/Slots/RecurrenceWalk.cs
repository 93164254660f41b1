using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Evaluation;
using NodaTime;
using Period = NodaTime.Period;
using RecurrenceRule = Ical.Net.DataTypes.RecurrenceRule;

namespace EpisodePlanner.Planning;

/// <summary>Walks a rule through local time, in a bounded number of steps.</summary>
/// <remarks>
/// The library walks from DTSTART, step by step, and applies zones in its own way. So local times are given to it as if
/// they were UTC, and DTSTART is first moved by whole intervals to just before the wanted time. That changes nothing
/// for rules without COUNT (minutes to weeks are of one length); COUNT moves along where every step is one time, and is
/// walked from its beginning otherwise. UNTIL is the caller's, since it names a moment.
/// </remarks>
internal sealed class RecurrenceWalk
{
    /// <summary>The most times of a counted rule that are walked over to reach the wanted time.</summary>
    public const int MostCounted = 100_000;

    /// <summary>The most steps without a time before a rule counts as over: more than a year of minutes.</summary>
    public const int MostUnmatched = 600_000;

    private readonly string text;
    private readonly RecurrenceRule rule;

    public RecurrenceWalk(string text, RecurrenceRule rule)
    {
        this.text = text;
        this.rule = rule;
    }

    /// <summary>The local times from the earliest to before the latest, ascending.</summary>
    public IEnumerable<LocalDateTime> Walls(LocalDateTime first, LocalDateTime earliest, LocalDateTime latest)
    {
        var walked = new RecurrenceRule(text) { Until = null };
        var moved = CanMove ? StepsToMove(first, earliest) : 0;
        if (rule.Count is { } count)
        {
            if (moved >= count)
            {
                return [];
            }

            walked.Count = count - (int)moved;
        }

        var start = first + Period.FromMinutes(moved * (StepMinutes ?? 0));
        return Enumerated(walked, start, earliest).TakeWhile(wall => wall < latest).Take(Recurrence.MostTaken);
    }

    private bool CanMove => StepMinutes is not null && (rule.Count is null || OneTimeAStep);

    private bool OneTimeAStep =>
        rule.ByMinute.Count + rule.ByHour.Count + rule.ByDay.Count + rule.ByMonthDay.Count + rule.ByYearDay.Count
            + rule.ByWeekNo.Count + rule.ByMonth.Count + rule.BySetPosition.Count == 0;

    /// <summary>Minutes in one step; null for months and years, whose few steps are simply walked.</summary>
    private long? StepMinutes => rule.Frequency switch
    {
        FrequencyType.Minutely => rule.Interval,
        FrequencyType.Hourly => rule.Interval * 60L,
        FrequencyType.Daily => rule.Interval * 1_440L,
        FrequencyType.Weekly => rule.Interval * 10_080L,
        _ => null,
    };

    /// <summary>Whole steps by which DTSTART can move and still not lie after the wanted time.</summary>
    private long StepsToMove(LocalDateTime first, LocalDateTime earliest)
    {
        var minutes = Period.Between(first, earliest, PeriodUnits.Minutes).Minutes;
        return Math.Max(0, minutes / (StepMinutes ?? 1));
    }

    private static IEnumerable<LocalDateTime> Enumerated(
        RecurrenceRule rule, LocalDateTime start, LocalDateTime earliest)
    {
        var happening = new CalendarEvent { Start = AsUtc(start), RecurrenceRule = rule };
        var options = new EvaluationOptions { MaxUnmatchedIncrementsLimit = MostUnmatched };
        return UntilOver(() => rule.Count is null
                ? happening.GetOccurrences(AsUtc(earliest), options)
                : happening.GetOccurrences(null, options).Take(MostCounted))
            .Select(time => LocalDateTime.FromDateTime(time.Period.StartTime.AsUtc))
            .Where(wall => wall >= earliest);
    }

    /// <summary>The times up to where the library gives up: its last year, or too many steps without a time.</summary>
    private static IEnumerable<Ical.Net.DataTypes.Occurrence> UntilOver(
        Func<IEnumerable<Ical.Net.DataTypes.Occurrence>> times)
    {
        using var walk = OrOver(() => times().GetEnumerator());
        while (walk is not null && OrOver(walk.MoveNext))
        {
            yield return walk.Current;
        }
    }

    private static T? OrOver<T>(Func<T> step)
    {
        try
        {
            return step();
        }
        catch (Exception e) when (e is EvaluationException or ArgumentOutOfRangeException)
        {
            return default;
        }
    }

    private static CalDateTime AsUtc(LocalDateTime local) =>
        new(DateTime.SpecifyKind(local.ToDateTimeUnspecified(), DateTimeKind.Utc));
}
