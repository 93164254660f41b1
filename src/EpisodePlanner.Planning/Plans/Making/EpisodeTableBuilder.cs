using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Adds the tails of the episodes to come to the bench problem and collects the episodes and series in columns.</summary>
internal sealed class EpisodeTableBuilder
{
    private readonly PlanDraft plan;
    private readonly Workshop workshop;
    private readonly TimeAxis axis;
    private readonly WorkProgress progress;
    private readonly StageModes modes;
    private readonly BenchDraft draft;
    private readonly StageEstimator estimator;
    private readonly LocalDate today;
    private readonly ILookup<Id, int> films;

    public EpisodeTableBuilder(PlanDraft plan, StageModes modes)
    {
        (this.plan, this.modes) = (plan, modes);
        (workshop, axis, progress, draft) = (plan.Workshop, plan.Axis, plan.Progress, plan.Bench);
        estimator = new StageEstimator(workshop.Settings);
        today = axis.DateOf(0);
        films = plan.Films.Stages.Where(film => film.Shot.Required).ToLookup(film => film.Task.Id, film => film.Stage);
    }

    public EpisodeTable Build()
    {
        var upcoming = UpcomingEpisodes.Of(workshop, today);
        var series = workshop.Series.Where(s => s.State != SeriesState.Finished).OrderBy(s => s.Name, StringComparer.Ordinal).ThenBy(s => s.Id).ToList();
        var tasks = workshop.Tasks.Where(t => t.Milestone is not null).ToLookup(t => t.Milestone!.Value);
        var episodes = upcoming.Select(episode => Row(episode, series.IndexOf(episode.Series), tasks)).ToList();
        return new EpisodeTable(episodes, [.. series.Select((s, i) => SeriesRow(s, i, episodes))]);
    }

    private EpisodeRow Row(UpcomingEpisode upcoming, int series, ILookup<Id, WorkTask> tasks)
    {
        var episode = upcoming.Episode;
        var (ready, fixes) = AddTail(upcoming, [.. episode.Milestones.SelectMany(m => tasks[m]).OrderBy(t => t.Id)]);
        var lead = (workshop.Settings.SafetyLeadHours ?? 0) + EarlyViewHours(workshop, episode);
        var told = workshop.ToldDates.Where(t => t.Episode == episode.Id && t.ToldOn <= today).MaxBy(t => (t.ToldOn, t.Id));
        return new EpisodeRow
        {
            Upcoming = upcoming,
            Series = series,
            ReadyStage = ready,
            FixesStage = fixes,
            Lead = (int)Math.Ceiling(lead * 60),
            PinnedOpening = episode.PinnedSlot is { } slot ? Math.Max(0, axis.MinuteOf(slot)) : -1,
            ToldBy = told is null ? -1 : Math.Max(0, axis.MinuteOf(told.Date.PlusDays(1))),
        };
    }

    public static decimal EarlyViewHours(Workshop workshop, Episode episode) =>
        episode.EarlyViewHours ?? workshop.Settings.EarlyViewHours ?? 0;

    /// <summary>The tail's parts one after the other, once all tasks of the milestones are done and their required shots taken.</summary>
    private (int Ready, int Fixes) AddTail(UpcomingEpisode upcoming, IReadOnlyList<WorkTask> tasks)
    {
        var tail = Tails.Of(workshop, upcoming.Assumed ? null : upcoming.Episode);
        var (before, ready, fixes) = (-1, -1, -1);
        for (var part = 0; part < tail.Count; part++)
        {
            var key = StageKey.OfTail(upcoming.Episode.Id, part);
            var state = progress.Of(key);
            if (state.IsDone)
            {
                continue;
            }

            var stage = draft.Add(new DraftStage(key, Stage(upcoming, tail[part], state), upcoming.Series.Id, WorkKind.Edit));
            Link(stage, before, tasks);
            before = stage;
            (ready, fixes) = tail[part].Kind == TailKind.Fixes ? (ready, stage) : (stage, fixes);
        }

        return ready < 0 && fixes < 0 && tasks.Any(t => !progress.IsDone(t) || films.Contains(t.Id)) ? (AddReady(upcoming, tasks), -1) : (ready, fixes);
    }

    private void Link(int stage, int before, IReadOnlyList<WorkTask> tasks)
    {
        if (before >= 0)
        {
            draft.Add(new BenchLink(before, stage, LinkKind.After));
            return;
        }

        foreach (var task in tasks)
        {
            plan.Links.AddFinish(task, stage);
            foreach (var film in films[task.Id])
            {
                draft.Add(new BenchLink(film, stage, LinkKind.After));
            }
        }
    }

    /// <summary>A tail that is done before its tasks are: the episode is ready with the last of these.</summary>
    private int AddReady(UpcomingEpisode upcoming, IReadOnlyList<WorkTask> tasks)
    {
        var key = StageKey.OfTail(upcoming.Episode.Id, 0);
        var done = new BenchStage { Name = upcoming.Episode.Title, Kind = StageKind.Attended, Minutes = 0, Modes = [new StageMode()] };
        var stage = draft.Add(new DraftStage(key, done, upcoming.Series.Id, WorkKind.Edit));
        Link(stage, -1, tasks);
        return stage;
    }

    private BenchStage Stage(UpcomingEpisode upcoming, TailPart part, StageProgress state) => new()
    {
        Name = $"{upcoming.Episode.Title}: {TailWords.Of(part.Kind)}",
        Kind = StageKind.Attended,
        Minutes = state.RunningSince is { } since
            ? Math.Max(1, state.Left(estimator.Of(part).Minutes) + Math.Min(0, axis.MinuteOf(since)))
            : state.Left(estimator.Of(part).Minutes),
        Modes = modes.OfTail(),
        MinimumBlock = workshop.Settings.MinimumBlockMinutes ?? Defaults.MinimumBlockMinutes,
        Begun = state.RunningSince is not null,
        NotBefore = upcoming.Series is { State: SeriesState.Resting, RestingUntil: { } day } ? Math.Max(0, axis.MinuteOf(day)) : 0,
    };

    private SeriesRow SeriesRow(Series series, int index, IReadOnlyList<EpisodeRow> episodes)
    {
        var (promise, assumed) = EpisodeTable.PromiseOf(workshop, series);
        var uploads = UploadDays.OfSeries(workshop, series.Id).Where(day => day <= today).ToValueList();
        var from = uploads.Count > 0 ? uploads[^1] : today;
        var rested = series is { State: SeriesState.Resting, RestingUntil: { } until } ? LocalDate.Max(from, until) : from;
        return new SeriesRow
        {
            Series = series,
            Promise = promise,
            PromiseAssumed = assumed,
            Uploads = uploads,
            SilentFrom = SilencePenalty.DayNumber(rested),
            Episodes = episodes.Select((e, i) => (e, i)).Where(x => x.e.Series == index).Select(x => x.i).ToValueList(),
        };
    }
}
