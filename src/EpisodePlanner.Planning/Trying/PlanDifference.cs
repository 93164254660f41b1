using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Two plans of one moment beside each other: only what differs.</summary>
/// <param name="Before">The plan that is.</param>
/// <param name="Then">The plan after a change.</param>
public sealed record PlanDifference(Plan Before, Plan Then)
{
    private static readonly Duration Week = Duration.FromDays(7);

    /// <summary>Hours of attended work more, negative for less.</summary>
    public decimal HoursMore => (Attended(Then) - Attended(Before)) / 60m;

    /// <summary>The uploads of both plans that get another day, or lose theirs or get one.</summary>
    public ValueList<UploadMove> Moved => UploadMoves.Between(Before, Then);

    /// <summary>The episodes that only the second plan has.</summary>
    public ValueList<PlannedEpisode> Added => Missing(Then, Before);

    /// <summary>The episodes that only the first plan has.</summary>
    public ValueList<PlannedEpisode> Gone => Missing(Before, Then);

    /// <summary>The outlooks that differ, by the first plan's order, the channel's last; a series that only one of them has is left out.</summary>
    public ValueList<OutlookChange> Outlooks
    {
        get
        {
            var then = Then.Series.Append(Then.Channel).ToDictionary(outlook => outlook.Series);
            return Before.Series.Append(Before.Channel)
                .Where(outlook => then.ContainsKey(outlook.Series))
                .Select(outlook => new OutlookChange(outlook, then[outlook.Series]))
                .Where(change => !change.Before.Forecast.SequenceEqual(change.Then.Forecast) || !change.Before.Alarms.Equals(change.Then.Alarms))
                .ToValueList();
        }
    }

    /// <summary>The stages of either plan that start in its next seven days, and not at that minute in the other; by start.</summary>
    public ValueList<StartChange> Starts
    {
        get
        {
            var until = Before.Request.PlannedAt + Week;
            var (before, then) = (Startable(Before), Startable(Then));
            return before.Keys.Union(then.Keys)
                .Select(key => (Stage: before.GetValueOrDefault(key) ?? then[key], From: before.GetValueOrDefault(key)?.Start, To: then.GetValueOrDefault(key)?.Start))
                .Where(change => change.From != change.To && (change.From < until || change.To < until))
                .OrderBy(change => change.From ?? change.To)
                .ThenBy(change => change.Stage.Index)
                .Select(change => new StartChange(change.Stage, change.From, change.To))
                .ToValueList();
        }
    }

    /// <summary>When the last work is done, in each; null where a plan has none.</summary>
    public (Instant? Before, Instant? Then) WorkEnds => (LastFinish(Before), LastFinish(Then));

    /// <summary>What only the second plan can't do.</summary>
    public ValueList<Finding> NewlyImpossible => Then.Findings
        .Where(finding => finding.Kind == FindingKind.Impossible && !Before.Findings.Contains(finding))
        .ToValueList();

    /// <summary>Whether a reader of dates would see no difference.</summary>
    public bool IsSame => Moved.Count == 0 && Added.Count == 0 && Gone.Count == 0 && Outlooks.Count == 0 && Starts.Count == 0
        && HoursMore == 0 && NewlyImpossible.Count == 0;

    private static int Attended(Plan plan) =>
        plan.Stages.Where(stage => stage.Kind == StageKind.Attended).Sum(stage => stage.Minutes);

    private static Dictionary<StageKey, PlannedStage> Startable(Plan plan) =>
        plan.Stages.Where(stage => !stage.Begun).ToDictionary(stage => stage.Key);

    private static Instant? LastFinish(Plan plan) => plan.Stages.Max(stage => stage.Finish);

    private static ValueList<PlannedEpisode> Missing(Plan plan, Plan other)
    {
        var known = other.Episodes.Select(episode => episode.Id).ToHashSet();
        return plan.Episodes.Where(episode => !known.Contains(episode.Id)).ToValueList();
    }
}

/// <summary>A stage that starts at another minute, or only in one of two plans.</summary>
/// <param name="Stage">The stage, as the first plan has it where it does.</param>
/// <param name="From">Its start in the first plan; null where it has none.</param>
/// <param name="To">Its start in the second plan; null where it has none.</param>
public sealed record StartChange(PlannedStage Stage, Instant? From, Instant? To);

/// <summary>The silences of one series, or of the channel, before a change and after it.</summary>
/// <param name="Before">Before.</param>
/// <param name="Then">After.</param>
public sealed record OutlookChange(Outlook Before, Outlook Then)
{
    /// <summary>The day of its last upload before; null for none.</summary>
    public LocalDate? FinaleBefore => Before.LastPlanned;

    /// <summary>The day of its last upload after; null for none.</summary>
    public LocalDate? FinaleThen => Then.LastPlanned;

    /// <summary>Days by which the last upload is later, negative for earlier; null where one of them has none.</summary>
    public int? FinaleLater => (FinaleBefore, FinaleThen) is ({ } from, { } to) ? Period.DaysBetween(from, to) : null;

    /// <summary>Days beyond the promise of the worst silence to come, before and after; 0 where the promise holds.</summary>
    public (int Before, int Then) WorstOver => (Before.WorstOver, Then.WorstOver);
}
