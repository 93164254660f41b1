using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Planning;

/// <summary>Collects what a plan has to say about its workshop.</summary>
internal sealed class Findings(PlanDraft draft, WorkshopNetwork network, BenchSchedule schedule, SlotSweep sweep)
{
    private readonly List<Finding> findings = [];

    public ValueList<Finding> All()
    {
        AddImpossible();
        AddMissedLags();
        AddMissedDates();
        AddEpisodesWithoutDate();
        findings.AddRange(ShotFindings.Of(draft));
        AddWithoutEffect();
        findings.AddRange(OutsideFindings.Of(draft));
        findings.AddRange(BankFindings.Of(draft, schedule, sweep));
        return findings.OrderBy(f => f.Kind).ToValueList();
    }

    private void AddImpossible()
    {
        for (var stage = 0; stage < draft.Problem.Stages.Count; stage++)
        {
            if (network.EarlyStart[stage] < 0 && !WaitsForImpossible(stage))
            {
                var says = new Impossibility(draft, network).Say(stage);
                findings.Add(new Finding(FindingKind.Impossible, Where(draft.Bench.Stages[stage].Key), says));
            }
        }
    }

    private bool WaitsForImpossible(int stage) => draft.Problem.Links.Any(l => l.To == stage && network.EarlyStart[l.From] < 0);

    /// <summary>Only lags after what is done or going on can be missed: what is still to be done is placed so that they hold.</summary>
    private void AddMissedLags()
    {
        foreach (var link in draft.Problem.Links.Where(l => l.AtMost is not null && schedule.IsPlaced(l.From)))
        {
            var from = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? schedule.Finish(link.From) : schedule.Start(link.From);
            AddMissedLag(new PassedLag(draft.Bench.Stages[link.From].Stage.Name, link.To, link.Kind, link.AtMost!.Value, from));
        }

        foreach (var lag in draft.Links.Passed)
        {
            AddMissedLag(lag);
        }
    }

    private void AddMissedLag(PassedLag lag)
    {
        if (!schedule.IsPlaced(lag.To))
        {
            return;
        }

        var to = lag.Kind is LinkKind.After or LinkKind.TogetherStart ? schedule.Start(lag.To) : schedule.Finish(lag.To);
        if (to - lag.Leaves > lag.AtMost)
        {
            var second = draft.Bench.Stages[lag.To];
            findings.Add(new Finding(
                FindingKind.Missed,
                Where(second.Key),
                $"\u201c{second.Stage.Name}\u201d must follow \u201c{lag.First}\u201d within {Words.Minutes(lag.AtMost)}, "
                + $"but the plan leaves {Words.Minutes(to - lag.Leaves)}, and \u201c{lag.First}\u201d can't come later any more: open hours before."));
        }
    }

    private void AddMissedDates()
    {
        foreach (var (stage, by) in DueDates.NeededBy(draft))
        {
            if (schedule.IsPlaced(stage) && schedule.Finish(stage) > by)
            {
                var item = draft.Bench.Stages[stage];
                findings.Add(new Finding(
                    FindingKind.Missed,
                    Where(item.Key),
                    $"\u201c{item.Stage.Name}\u201d is needed by {Words.Day(draft.Axis.DateOf(by - 1))}, "
                    + $"but is finished {Words.Moment(draft.Axis.LocalOf(schedule.Finish(stage)))}."));
            }
        }

        for (var e = 0; e < draft.Episodes.Episodes.Count; e++)
        {
            AddMissedEpisode(draft.Episodes.Episodes[e], sweep.Minutes[e]);
        }
    }

    private void AddMissedEpisode(EpisodeRow row, int publish)
    {
        var where = $"$.episodes['{row.Upcoming.Episode.Id}']";
        var said = publish < 0 ? "has no date" : $"goes out {Words.Moment(draft.Axis.LocalOf(publish))}";
        if (row.ToldBy >= 0 && (publish < 0 || publish >= row.ToldBy))
        {
            findings.Add(new Finding(
                FindingKind.Missed,
                where,
                $"\u201c{row.Upcoming.Episode.Title}\u201d was told for {Words.Day(draft.Axis.DateOf(Math.Max(0, row.ToldBy - 1)))}, but {said}."));
        }

        if (row.PinnedOpening >= 0 && row.Upcoming.Episode.PinnedSlot is { } slot
            && (publish < row.PinnedOpening || draft.Axis.DateOf(publish) != slot.Date))
        {
            findings.Add(new Finding(
                FindingKind.Missed, where, $"\u201c{row.Upcoming.Episode.Title}\u201d is pinned to {Words.Day(slot.Date)}, but {said}."));
        }
    }

    private void AddEpisodesWithoutDate()
    {
        var finishes = schedule.Finishes();
        for (var e = 0; e < draft.Episodes.Episodes.Count; e++)
        {
            var row = draft.Episodes.Episodes[e];
            var ready = SlotSweep.AvailableFrom(row, finishes);
            if (sweep.Minutes[e] < 0 && ready >= 0)
            {
                findings.Add(new Finding(
                    FindingKind.Note,
                    $"$.episodes['{row.Upcoming.Episode.Id}']",
                    $"\u201c{row.Upcoming.Episode.Title}\u201d is ready {Words.Moment(draft.Axis.LocalOf(Math.Min(ready, draft.Axis.Horizon)))}, but no slot is free for it."));
            }
        }
    }

    private void AddWithoutEffect()
    {
        var left = draft.Bench.Stages.Select(s => s.Key.Task).ToHashSet();
        var tasks = draft.Workshop.Tasks.Where(t => left.Contains(t.Id)).ToList();
        Say(tasks.Any(t => t.Stages.Any(s => s.FailureChance > 0)), "$.tasks", "chances of failure are carried, but do not move dates yet: the plan counts every run and test as passing once");
        Say(tasks.Any(t => t.Stages.Any(s => s.MayComeLater)), "$.tasks", "deliveries that may come later are planned at their likely length");
        Say(draft.Workshop.Places.Any(p => p.FitDayChance is not null), "$.places", "the chance of a fit day does not move dates: every day counts as fit");
        Say(tasks.Any(t => t.Shots.Any(s => s is { Minutes: > 0, State: ShotState.Missing, Moment: ShotMoment.During })), "$.tasks", "the minutes of shots during a task take no time of their own: they are filmed while it is done, and the task's filmingMinutes are for that");
        Say(tasks.Any(t => t.Shots.Any(s => s is { Minutes: > 0, State: ShotState.Missing, Moment: not ShotMoment.During, Required: false, OnceOnly: false })), "$.tasks", "shots that are neither required nor once-only take no time");
    }

    private void Say(bool applies, string where, string says)
    {
        if (applies)
        {
            findings.Add(new Finding(FindingKind.NoEffect, where, $"{char.ToUpperInvariant(says[0])}{says[1..]}."));
        }
    }

    private static string Where(StageKey key) =>
        key.IsTail ? $"$.episodes['{key.Episode}']" : $"$.tasks['{key.Task}']";
}
