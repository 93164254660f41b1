using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Turns a schedule back into the words and ids of the workshop.</summary>
internal sealed class PlanAssembly
{
    private readonly PlanDraft draft;
    private readonly WorkshopNetwork network;
    private readonly SearchResult found;
    private readonly SlotSweep sweep;
    private readonly Explanations explanations;
    private readonly Dictionary<Id, int> workByEpisode;
    private readonly Dictionary<Id, int> workByMilestone;

    public PlanAssembly(PlanDraft draft, WorkshopNetwork network, SearchResult found, SlotSweep sweep, AcceptedOrder accepted)
    {
        (this.draft, this.network, this.found, this.sweep) = (draft, network, found, sweep);
        explanations = new Explanations(draft, found.Schedule, accepted.Stages);
        workByEpisode = Work(s => s.Key.IsTail ? s.Key.Episode : null);
        workByMilestone = Work(s => s.Key.IsTail ? null : draft.Workshop.Tasks.Find(s.Key.Task)?.Milestone);
        sweep.Run(found.Schedule.Finishes());
    }

    public Plan Build()
    {
        var episodes = Episodes();
        var outlooks = new Outlooks(draft, episodes);
        return new Plan
        {
            Request = draft.Request,
            Zone = draft.Axis.Zone,
            Horizon = draft.Axis.MomentOf(draft.Axis.Horizon),
            Stages = Stages(),
            Episodes = episodes,
            Series = outlooks.Series(),
            Channel = outlooks.Channel(),
            Findings = new Findings(draft, network, found.Schedule, sweep).All(),
            Schedule = found.Schedule,
            Rule = found.Rule,
            Generated = found.Generated,
            Weights = new PlanWeights(found.Row[0], found.Row[1], found.Row[2], found.Row[3]),
        };
    }

    private ValueList<PlannedStage> Stages() => Enumerable.Range(0, draft.Bench.Stages.Count)
        .Select(Stage)
        .OrderBy(stage => stage.Start ?? Instant.MaxValue)
        .ThenBy(stage => stage.Index)
        .ToValueList();

    private PlannedStage Stage(int index)
    {
        var stage = draft.Bench.Stages[index];
        return new PlannedStage
        {
            Key = stage.Key,
            Index = index,
            Name = stage.Stage.Name,
            Series = stage.Series,
            Kind = stage.Stage.Kind,
            Work = stage.Work,
            Minutes = stage.Stage.Minutes,
            Begun = stage.Stage.Begun,
            RunsAlone = RunsAlone(index),
            Parts = Parts(index),
            CauseLater = () => explanations.Cause(index),
            Network = network.EarlyStart[index] < 0 ? null : Dates(index),
        };
    }

    private bool RunsAlone(int index)
    {
        var parts = found.Schedule.Parts(index);
        if (parts.IsEmpty || draft.Bench.Stages[index].Stage.Kind != StageKind.Run)
        {
            return false;
        }

        var run = parts[1];
        return draft.Problem.Presence.WorkBetween(run.Start, run.End) < run.End - run.Start;
    }

    private ValueList<PlannedPart> Parts(int index)
    {
        var stage = draft.Bench.Stages[index].Stage;
        var parts = new List<PlannedPart>();
        foreach (var part in found.Schedule.Parts(index))
        {
            var mode = stage.Modes[part.Mode];
            var takesHands = part.Kind switch
            {
                PartKind.Load => stage.LoadTakesHands,
                PartKind.Unload => stage.UnloadTakesHands,
                PartKind.Run => false,
                _ => true,
            };
            var stations = (mode.Machine >= 0 ? [mode.Machine] : (IEnumerable<int>)[]).Concat(takesHands ? mode.Stations : []);
            parts.Add(new PlannedPart(
                part.Kind, draft.Axis.MomentOf(part.Start), draft.Axis.MomentOf(part.End), stations.Select(draft.Stations.IdOf).ToValueList()));
        }

        return parts.ToValueList();
    }

    private NetworkDates Dates(int index) => new(
        draft.Axis.MomentOf(network.EarlyStart[index]),
        draft.Axis.MomentOf(network.EarlyFinish[index]),
        draft.Axis.MomentOf(network.LateStart[index]),
        draft.Axis.MomentOf(network.LateFinish[index]),
        network.TotalFloat(index),
        network.FreeFloat[index],
        network.Critical[index]);

    private ValueList<PlannedEpisode> Episodes() => Enumerable.Range(0, draft.Episodes.Episodes.Count)
        .OrderBy(e => sweep.Minutes[e] < 0 ? int.MaxValue : sweep.Minutes[e])
        .ThenBy(e => e)
        .Select(Episode)
        .ToValueList();

    private PlannedEpisode Episode(int index)
    {
        var row = draft.Episodes.Episodes[index];
        var isReady = row.ReadyStage < 0 || found.Schedule.IsPlaced(row.ReadyStage);
        var last = LastStage(row);
        Instant? publish = sweep.Minutes[index] < 0 ? null : draft.Axis.MomentOf(sweep.Minutes[index]);
        return new PlannedEpisode
        {
            Id = row.Upcoming.Episode.Id,
            Title = row.Upcoming.Episode.Title,
            Series = row.Upcoming.Series.Id,
            Assumed = row.Upcoming.Assumed,
            Milestones = row.Upcoming.Episode.Milestones,
            Ready = isReady ? draft.Axis.MomentOf(row.ReadyStage < 0 ? 0 : found.Schedule.Finish(row.ReadyStage)) : null,
            Slot = sweep.Windows[index] < 0 ? null : draft.Slots[sweep.Windows[index]],
            Publish = publish,
            Date = publish?.InZone(draft.Axis.Zone).Date,
            WorkMinutes = WorkMinutes(row),
            ChainLater = () => last >= 0 ? explanations.Chain(last) : [],
        };
    }

    /// <summary>The stage that decides the date: the last of the tail, or the fixes where these end too late; −1 for none.</summary>
    private int LastStage(EpisodeRow row)
    {
        var ready = row.ReadyStage >= 0 && found.Schedule.IsPlaced(row.ReadyStage) ? found.Schedule.Finish(row.ReadyStage) : -1;
        var fixes = row.FixesStage >= 0 && found.Schedule.IsPlaced(row.FixesStage) ? found.Schedule.Finish(row.FixesStage) : -1;
        return fixes > ready + row.Lead ? row.FixesStage : ready >= 0 ? row.ReadyStage : -1;
    }

    private int WorkMinutes(EpisodeRow row) =>
        workByEpisode.GetValueOrDefault(row.Upcoming.Episode.Id)
        + row.Upcoming.Episode.Milestones.Sum(milestone => workByMilestone.GetValueOrDefault(milestone));

    private Dictionary<Id, int> Work(Func<DraftStage, Id?> owner) => draft.Bench.Stages
        .Where(s => s.Stage.Kind == StageKind.Attended && owner(s) is not null)
        .GroupBy(s => owner(s)!.Value)
        .ToDictionary(group => group.Key, group => group.Sum(s => s.Stage.Minutes));
}
