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

    /// <summary>The time that the plan keeps for it; null where it is taken during its task, takes no time or has passed.</summary>
    public required PlannedStage? Planned { get; init; }

    /// <summary>Its moment has passed, and nobody said whether it is lost.</summary>
    public required bool Passed { get; init; }
}

/// <summary>Finds what must be filmed before the work destroys it.</summary>
public static class Filming
{
    /// <summary>
    /// The missing shots that the cut can't do without or that can't be repeated, and that the work ends: before a task,
    /// until it starts; during it, until it is finished; after it, until the task that destroys it starts, and as long as
    /// one likes where nothing does. By latest moment, those without one after them, those whose moment has passed last.
    /// Finished series are left out.
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

    private static ShotToFilm? Find(TaskTimes times, Workshop workshop, WorkTask task, Shot shot)
    {
        var passed = times.HavePassed(task, shot);
        var planned = times.Film(task, shot);
        var (from, until, lostBy) = shot.Moment switch
        {
            ShotMoment.Before => (null, times.Start(task), null),
            ShotMoment.During => (times.Start(task), times.Finish(task), null),
            _ when shot.LostBy is { } id && workshop.Tasks.Find(id) is { } later => (times.Finish(task), times.Start(later), later),
            _ => ((Instant?)times.Finish(task), (Instant?)null, (WorkTask?)null),
        };
        return shot.Moment == ShotMoment.After && lostBy is null && planned is null ? null : new ShotToFilm
        {
            Task = task,
            Shot = shot,
            From = from,
            Until = passed ? null : until,
            LostBy = lostBy,
            Planned = planned,
            Passed = passed,
        };
    }
}

/// <summary>When tasks start and finish by a plan, and how far they have come.</summary>
internal sealed class TaskTimes
{
    private readonly ILookup<Id, PlannedStage> stages;
    private readonly Dictionary<StageKey, PlannedStage> films;
    private readonly WorkProgress progress;
    private readonly ShotMoments moments;

    public TaskTimes(Plan plan)
    {
        stages = plan.Stages.Where(stage => stage.Key.IsTask).ToLookup(stage => stage.Key.Task);
        films = plan.Stages.Where(stage => stage.Key.IsShot).ToDictionary(stage => stage.Key);
        progress = new WorkProgress(plan.Request.Workshop, plan.Request.PlannedAt);
        moments = new ShotMoments(plan.Request.Workshop, progress);
    }

    public bool HavePassed(WorkTask task, Shot shot) => moments.HavePassed(task, shot);

    /// <summary>The stretch of time that is kept for a shot; null for none.</summary>
    public PlannedStage? Film(WorkTask task, Shot shot) => films.GetValueOrDefault(StageKey.OfShot(task.Id, shot.Id));

    /// <summary>The start of what is left of it; null where it is done, has no date or goes on.</summary>
    public Instant? Start(WorkTask task) => progress.HasStarted(task) ? null : stages[task.Id].Min(stage => stage.Start);

    /// <summary>The finish of what is left of it; null where it is done or has no date.</summary>
    public Instant? Finish(WorkTask task) =>
        stages[task.Id].All(stage => stage.Finish is not null) ? stages[task.Id].Max(stage => stage.Finish) : null;
}
