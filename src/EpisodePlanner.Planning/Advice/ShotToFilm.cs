using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A missing shot that the work will make impossible.</summary>
public sealed record ShotToFilm
{
    /// <summary>The task it belongs to.</summary>
    public required WorkTask Task { get; init; }

    /// <summary>The shot.</summary>
    public required Shot Shot { get; init; }

    /// <summary>The first moment at which it can be taken by plan; null where it has none, or where that is now.</summary>
    public required Instant? From { get; init; }

    /// <summary>The moment by plan from which it can't be taken any more; null where that has no date.</summary>
    public required Instant? Until { get; init; }

    /// <summary>The later task that makes it impossible, for a shot after its task.</summary>
    public required WorkTask? LostBy { get; init; }

    /// <summary>Its moment has passed, and nobody said whether it is lost.</summary>
    public required bool Passed { get; init; }
}

/// <summary>Finds what must be filmed before the work destroys it.</summary>
public static class Filming
{
    /// <summary>
    /// The missing shots that the cut can't do without or that can't be repeated, and that the work ends: before a task,
    /// until it starts; during it, until it is finished; after it, until the task that destroys it starts. By latest
    /// moment, those without one after them, those whose moment has passed last. Finished series are left out.
    /// </summary>
    public static ValueList<ShotToFilm> First(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var finished = workshop.Series.Where(s => s.State == SeriesState.Finished).Select(s => s.Id).ToHashSet();
        var series = PlanDraft.SeriesByTask(workshop);
        var times = new TaskTimes(plan);
        return workshop.Tasks
            .Where(task => !(series.TryGetValue(task.Id, out var owner) && finished.Contains(owner.Id)))
            .SelectMany(task => task.Shots.Where(IsNeeded), (task, shot) => Find(times, workshop, task, shot))
            .OfType<ShotToFilm>()
            .OrderBy(shot => shot.Passed)
            .ThenBy(shot => shot.Until ?? Instant.MaxValue)
            .ThenBy(shot => shot.Task.Id)
            .ThenBy(shot => shot.Shot.Id)
            .ToValueList();
    }

    private static bool IsNeeded(Shot shot) => shot.State == ShotState.Missing && (shot.Required || shot.OnceOnly);

    private static ShotToFilm? Find(TaskTimes times, Workshop workshop, WorkTask task, Shot shot) => shot.Moment switch
    {
        ShotMoment.Before => Of(task, shot, null, times.Start(task), null, times.HasStarted(task)),
        ShotMoment.During => Of(task, shot, times.Start(task), times.Finish(task), null, times.IsDone(task)),
        _ when shot.LostBy is { } id && workshop.Tasks.Find(id) is { } lostBy =>
            Of(task, shot, times.Finish(task), times.Start(lostBy), lostBy, times.HasStarted(lostBy)),
        _ => null,
    };

    private static ShotToFilm Of(WorkTask task, Shot shot, Instant? from, Instant? until, WorkTask? lostBy, bool passed) => new()
    {
        Task = task,
        Shot = shot,
        From = from,
        Until = passed ? null : until,
        LostBy = lostBy,
        Passed = passed,
    };
}

/// <summary>When tasks start and finish by a plan, and how far they have come.</summary>
internal sealed class TaskTimes
{
    private readonly ILookup<Id, PlannedStage> stages;
    private readonly WorkProgress progress;

    public TaskTimes(Plan plan)
    {
        stages = plan.Stages.Where(stage => !stage.Key.IsTail).ToLookup(stage => stage.Key.Task);
        progress = new WorkProgress(plan.Request.Workshop, plan.Request.PlannedAt);
    }

    public bool IsDone(WorkTask task) => progress.IsDone(task);

    public bool HasStarted(WorkTask task) =>
        task.Stages.Any(stage => progress.Of(StageKey.OfTask(task.Id, stage.Id)).IsStarted);

    /// <summary>The start of what is left of it; null where it is done, has no date or goes on.</summary>
    public Instant? Start(WorkTask task) => HasStarted(task) ? null : stages[task.Id].Min(stage => stage.Start);

    /// <summary>The finish of what is left of it; null where it is done or has no date.</summary>
    public Instant? Finish(WorkTask task) =>
        stages[task.Id].All(stage => stage.Finish is not null) ? stages[task.Id].Max(stage => stage.Finish) : null;
}
