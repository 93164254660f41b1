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

    /// <summary>Since when it can be foreseen; null where that was not looked at yet.</summary>
    public required ForeseenSince? Foreseen { get; init; }

    /// <summary>
    /// What wins days, the least left beyond the promise first, then the fewest hours; pairs only where no single one is enough.
    /// </summary>
    public required ValueList<Remedy> Helping { get; init; }

    /// <summary>What was tried and wins nothing, in words.</summary>
    public required ValueList<string> InVain { get; init; }

    /// <summary>What openly resting would do; null for the channel, and where that was not looked at yet.</summary>
    public required Remedy? Rest { get; init; }

    /// <summary>Whether everything was tried.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Looks for ways out of the first silence of a series, or of the channel.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The series; the channel for an empty id.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="found">Told each single way out that wins days, as it is found; from several threads.</param>
    /// <param name="stop">Ends the trials; what was tried by then is told.</param>
    /// <returns>Null where the plan has no such series, or its promise holds.</returns>
    public static SilenceRemedies? Of(
        Plan plan, Id series, IProgress<double>? progress = null, IProgress<Remedy>? found = null, CancellationToken stop = default)
    {
        if (OutlookOf(plan, series) is not { Alarms: [var alarm, ..] } outlook)
        {
            return null;
        }

        var ideas = RemedyIdeas.Of(plan, outlook, alarm);
        var trials = new Trials(plan, outlook, new SharedProgress(progress, ideas.Count + 1), stop);
        var tried = trials.All(ideas, found);
        var singles = Ranked(tried.Where(remedy => remedy.DaysWon > 0));
        return new SilenceRemedies
        {
            Plan = plan,
            Outlook = outlook,
            Alarm = alarm,
            Helping = Ranked(singles.Concat(singles.Any(remedy => remedy.OverThen == 0) ? [] : Pairs(trials, singles))),
            InVain = tried.Where(remedy => remedy.DaysWon <= 0).Select(remedy => remedy.Says).ToValueList(),
            Rest = RemedyIdeas.Rest(plan, outlook, alarm) is { } rest && trials.All([rest], null) is [var resting] ? resting : null,
            Foreseen = stop.IsCancellationRequested ? null : new Hindsight(plan, stop).Of(outlook),
            IsWhole = !stop.IsCancellationRequested,
        };
    }

    /// <summary>The same as far as it was found, to be told while the rest is tried.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The series; the channel for an empty id.</param>
    /// <param name="singles">What was found so far.</param>
    public static SilenceRemedies? Partly(Plan plan, Id series, IEnumerable<Remedy> singles) =>
        OutlookOf(plan, series) is { Alarms: [var alarm, ..] } outlook
            ? new SilenceRemedies
            {
                Plan = plan,
                Outlook = outlook,
                Alarm = alarm,
                Helping = Ranked(singles),
                InVain = [],
                Rest = null,
                Foreseen = null,
                IsWhole = false,
            }
            : null;

    private static Outlook? OutlookOf(Plan plan, Id series) =>
        series.IsEmpty ? plan.Channel : plan.Series.FirstOrDefault(one => one.Series == series);

    private static ValueList<Remedy> Ranked(IEnumerable<Remedy> remedies) => remedies
        .OrderBy(remedy => remedy.OverThen)
        .ThenBy(remedy => Math.Max(0, remedy.Difference.HoursMore))
        .ThenBy(remedy => remedy.Later.Count)
        .ThenBy(remedy => remedy.Says, StringComparer.Ordinal)
        .ToValueList();

    /// <summary>Two of the best together, where they change different things.</summary>
    private static IEnumerable<Remedy> Pairs(Trials trials, ValueList<Remedy> singles)
    {
        var best = singles.Take(BestForPairs).ToList();
        var pairs =
            from i in Enumerable.Range(0, best.Count)
            from j in Enumerable.Range(i + 1, best.Count - i - 1)
            where !best[i].Change.Touches().Intersect(best[j].Change.Touches()).Any()
            select Together(best[i], best[j]);
        return trials.All([.. pairs], null).Where(both => both.OverThen < best[0].OverThen);
    }

    private static RemedyIdea Together(Remedy first, Remedy second) => new(
        RemedyKind.Pair,
        $"{first.Says}, and {second.Says}",
        new Batch([first.Change, second.Change]),
        first.Cautions.Concat(second.Cautions).Distinct().ToValueList());

    /// <summary>Plans ideas, several at a time; what comes out is in their order, however they were planned.</summary>
    private sealed class Trials(Plan plan, Outlook outlook, SharedProgress share, CancellationToken stop)
    {
        public IReadOnlyList<Remedy> All(IReadOnlyList<RemedyIdea> ideas, IProgress<Remedy>? found) =>
            [.. ideas.AsParallel().AsOrdered().Select(idea => Tried(idea, found)).OfType<Remedy>()];

        private Remedy? Tried(RemedyIdea idea, IProgress<Remedy>? found)
        {
            var then = stop.IsCancellationRequested ? null : Replanning.After(plan, idea.Change, stop);
            share.Step();
            if (then is null || stop.IsCancellationRequested)
            {
                return null;
            }

            var remedy = new Remedy
            {
                Kind = idea.Kind,
                Says = idea.Says,
                Change = idea.Change,
                Cautions = idea.Cautions,
                Before = plan,
                Then = then,
                OverBefore = outlook.WorstOver,
                OverThen = OutlookOf(then, outlook.Series)!.WorstOver,
            };
            if (remedy.DaysWon > 0)
            {
                found?.Report(remedy);
            }

            return remedy;
        }
    }
}
