using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The windows of slot rules.</summary>
public static class SlotWindows
{
    /// <summary>
    /// The windows that open inside a plan or are open when it begins, by opening and then by rule. Left out are the
    /// days a rule excepts (by the date its rule names) and the days to avoid (by the local date of the opening). A
    /// rule gives at most <see cref="Recurrence.MostTaken"/> windows, the earliest.
    /// </summary>
    /// <param name="rules">The rules.</param>
    /// <param name="daysToAvoid">Days on which nothing is published.</param>
    /// <param name="axis">The plan's axis; its zone reads the local times.</param>
    /// <exception cref="FormatException">
    /// A rule can't be read; <see cref="Recurrence.TryParse"/> tells beforehand.
    /// </exception>
    public static ValueList<SlotWindow> Of(
        IEnumerable<SlotRule> rules, IEnumerable<LocalDate> daysToAvoid, TimeAxis axis)
    {
        var avoided = daysToAvoid.ToHashSet();
        return rules
            .SelectMany(rule => Windows(rule, axis))
            .Where(window => !avoided.Contains(window.LocalOpening.Date))
            .OrderBy(window => window.Opening)
            .ThenBy(window => window.Rule)
            .ToValueList();
    }

    /// <summary>The windows of one rule, in no promised order.</summary>
    private static IEnumerable<SlotWindow> Windows(SlotRule rule, TimeAxis axis)
    {
        var excepted = rule.Except.ToHashSet();
        var from = axis.MomentOf(-rule.WindowMinutes);
        return Recurrence.Parse(rule.Rule)
            .Occurrences(rule.From + rule.At, axis.Zone, from, axis.MomentOf(axis.Horizon))
            .Where(time => !excepted.Contains(time.Wall.Date))
            .Select(time => Window(rule, time.Moment, axis))
            .Where(window => window.Opening >= 0 || window.End > 0)
            .DistinctBy(window => window.Opening);
    }

    private static SlotWindow Window(SlotRule rule, Instant moment, TimeAxis axis)
    {
        var opening = axis.MinuteOf(moment);
        var local = axis.LocalOf(opening).LocalDateTime;
        return new SlotWindow(rule.Id, opening, opening + rule.WindowMinutes, local, rule.Series);
    }
}
