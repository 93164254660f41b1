using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>A missing shot for which the plan keeps time.</summary>
/// <param name="Task">Its task.</param>
/// <param name="Shot">The shot.</param>
/// <param name="Stage">Its stage of the bench problem.</param>
internal sealed record FilmStage(WorkTask Task, Shot Shot, int Stage);

/// <summary>
/// Gives missing shots that can be taken only once, or that the cut needs, their time: one unbroken stretch of any one
/// person, while the place of the task is open. A shot before its task comes after what that task waits for, so that
/// there is something to see, and before its first stage; a shot after its task comes before the first stage of the task
/// that destroys it. Shots during a task take no stage of their own: they are taken while it is done, and the task's
/// filming minutes are for that. A moment that has passed keeps nothing waiting.
/// </summary>
internal sealed class FilmStages
{
    private readonly PlanDraft draft;
    private readonly StageModes modes;
    private readonly ShotMoments moments;
    private readonly List<FilmStage> stages = [];
    private readonly List<(WorkTask Task, Shot Shot)> unordered = [];

    public FilmStages(PlanDraft draft, StageModes modes)
    {
        (this.draft, this.modes) = (draft, modes);
        moments = new ShotMoments(draft.Workshop, draft.Progress);
    }

    /// <summary>The shots that have a stage, by task.</summary>
    public IReadOnlyList<FilmStage> Stages => stages;

    /// <summary>Shots whose task is only done once the task that is said to destroy them has begun.</summary>
    public IReadOnlyList<(WorkTask Task, Shot Shot)> Unordered => unordered;

    /// <summary>Whether a shot is given time of its own while its moment has not passed.</summary>
    public static bool TakesTime(Shot shot) =>
        shot is { State: ShotState.Missing, Minutes: > 0, Moment: not ShotMoment.During } && (shot.Required || shot.OnceOnly);

    /// <summary>Adds the stages of a task's shots; the stages and links of all tasks are there already.</summary>
    public void AddTo(WorkTask task, Series? series)
    {
        foreach (var shot in task.Shots.Where(TakesTime).Where(shot => !moments.HavePassed(task, shot)).OrderBy(shot => shot.Id))
        {
            var stage = draft.Bench.Add(new DraftStage(
                StageKey.OfShot(task.Id, shot.Id), Stage(task, shot, series), series?.Id ?? default, WorkKind.Film));
            stages.Add(new FilmStage(task, shot, stage));
            Link(task, shot, stage);
        }
    }

    private BenchStage Stage(WorkTask task, Shot shot, Series? series) => new()
    {
        Name = $"film \u2018{shot.Name}\u2019",
        Kind = StageKind.Attended,
        Minutes = shot.Minutes,
        Modes = modes.OfShot(PlaceOf(task, shot)),
        MinimumBlock = int.MaxValue,
        NotBefore = series is { State: SeriesState.Resting, RestingUntil: { } day } ? Math.Max(0, draft.Axis.MinuteOf(day)) : 0,
    };

    private void Link(WorkTask task, Shot shot, int stage)
    {
        if (shot.Moment == ShotMoment.Before)
        {
            draft.Links.AddWaitsOf(task, stage);
            draft.Links.AddStart(stage, task);
            return;
        }

        draft.Links.AddFinish(task, stage);
        if (shot.LostBy is not { } id || draft.Workshop.Tasks.Find(id) is not { } lostBy)
        {
            return;
        }

        if (draft.Links.WouldCircle(stage, lostBy))
        {
            unordered.Add((task, shot));
        }
        else
        {
            draft.Links.AddStart(stage, lostBy);
        }
    }

    /// <summary>
    /// The one place at which the first stage is done, or the last for a shot after the task: a place that it names or
    /// where its machine stands; null where there are several, or none is named.
    /// </summary>
    private Place? PlaceOf(WorkTask task, Shot shot)
    {
        var nearest = task.Stages.Count == 0 ? null : shot.Moment == ShotMoment.Before ? task.Stages[0] : task.Stages[^1];
        var stations = (nearest?.Needs ?? []).Where(choice => choice.Count == 1).Select(choice => choice[0]);
        var places = stations
            .Select(id => draft.Workshop.Machines.Find(id)?.Place ?? id)
            .Distinct()
            .Select(draft.Workshop.Places.Find)
            .OfType<Place>()
            .ToList();
        return places.Count == 1 ? places[0] : null;
    }
}
