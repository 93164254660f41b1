namespace EpisodePlanner.Planning;

/// <summary>A silence beyond its promise with what can be done about it; every gain was found by planning again.</summary>
public sealed record SilenceRemedies
{
    private const int BestForPairs = 5;

    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>Whose silence: a series' or the channel's.</summary>
    public required Outlook Outlook { get; init; }

    /// <summary>The first silence beyond the promise.</summary>
    public required SilenceAhead Alarm { get; init; }

    /// <summary>
    /// What wins days, the least left beyond the promise first, then the fewest hours; pairs only where no single one is enough.
    /// </summary>
    public required ValueList<Remedy> Helping { get; init; }

    /// <summary>What was tried and wins nothing, in words.</summary>
    public required ValueList<string> InVain { get; init; }

    /// <summary>What openly resting would do; null for the channel.</summary>
    public required Remedy? Rest { get; init; }

    /// <summary>Looks for ways out of the first silence of a series, or of the channel.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The series; the channel for an empty id.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the trials; what was tried by then is told.</param>
    /// <returns>Null where the plan has no such series, or its promise holds.</returns>
    public static SilenceRemedies? Of(Plan plan, Id series, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var outlook = series.IsEmpty ? plan.Channel : plan.Series.FirstOrDefault(one => one.Series == series);
        if (outlook is not { Alarms: [var alarm, ..] })
        {
            return null;
        }

        var ideas = RemedyIdeas.Of(plan, outlook, alarm);
        var share = new SharedProgress(progress, ideas.Count + 1);
        var tried = ideas.TakeWhile(_ => !stop.IsCancellationRequested).Select(idea => Tried(plan, outlook, idea, share, stop)).OfType<Remedy>().ToList();
        var singles = Ranked(tried.Where(remedy => remedy.DaysWon > 0));
        return new SilenceRemedies
        {
            Plan = plan,
            Outlook = outlook,
            Alarm = alarm,
            Helping = Ranked(singles.Concat(singles.Any(remedy => remedy.OverThen == 0) ? [] : Pairs(plan, outlook, singles, stop))),
            InVain = tried.Where(remedy => remedy.DaysWon <= 0).Select(remedy => remedy.Says).ToValueList(),
            Rest = RemedyIdeas.Rest(plan, outlook, alarm) is { } rest ? Tried(plan, outlook, rest, share, stop) : null,
        };
    }

    private static ValueList<Remedy> Ranked(IEnumerable<Remedy> remedies) => remedies
        .OrderBy(remedy => remedy.OverThen)
        .ThenBy(remedy => Math.Max(0, remedy.HoursMore))
        .ThenBy(remedy => remedy.Later.Count)
        .ToValueList();

    private static Remedy? Tried(Plan plan, Outlook outlook, RemedyIdea idea, SharedProgress? share, CancellationToken stop)
    {
        var then = Replanning.After(plan, idea.Change, stop);
        share?.Step();
        return then is null ? null : new Remedy
        {
            Kind = idea.Kind,
            Says = idea.Says,
            Change = idea.Change,
            Cautions = idea.Cautions,
            Before = plan,
            Then = then,
            OverBefore = Over(outlook),
            OverThen = Over(outlook.Series.IsEmpty ? then.Channel : then.Series.Single(one => one.Series == outlook.Series)),
        };
    }

    /// <summary>Two of the best together, where they change different things.</summary>
    private static List<Remedy> Pairs(Plan plan, Outlook outlook, ValueList<Remedy> singles, CancellationToken stop)
    {
        var best = singles.Take(BestForPairs).ToList();
        var pairs =
            from i in Enumerable.Range(0, best.Count)
            from j in Enumerable.Range(i + 1, best.Count - i - 1)
            where !best[i].Change.Touches().Intersect(best[j].Change.Touches()).Any()
            select (First: best[i], Second: best[j]);
        return pairs.TakeWhile(_ => !stop.IsCancellationRequested)
            .Select(pair => Tried(plan, outlook, Together(pair.First, pair.Second), null, stop))
            .OfType<Remedy>()
            .Where(both => both.OverThen < best[0].OverThen)
            .ToList();
    }

    private static RemedyIdea Together(Remedy first, Remedy second) => new(
        RemedyKind.Pair,
        $"{first.Says}, and {second.Says}",
        new Batch([first.Change, second.Change]),
        first.Cautions.Concat(second.Cautions).Distinct().ToValueList());

    private static int Over(Outlook outlook) => outlook.Alarms.Select(alarm => alarm.DaysOver).DefaultIfEmpty(0).Max();
}
