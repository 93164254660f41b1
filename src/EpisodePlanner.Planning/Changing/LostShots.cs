using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// What a change to the log does to missing shots that can be taken only once: a shot before its task is lost with the
/// first entry on that task, one during it when the task is done, one after it with the first entry on the task that
/// destroys it. A task that the same change sets stands as that change says, so that files, undos and corrections keep
/// their own word; a moment that had passed before is left for the maker to tell.
/// </summary>
internal static class LostShots
{
    /// <summary>The change with the losses that follow from it.</summary>
    /// <param name="change">A change that was tried.</param>
    /// <param name="before">The workshop before it.</param>
    /// <param name="after">The workshop after it.</param>
    public static Change Following(Change change, Workshop before, Workshop after) =>
        With(change, By(change, before, after).Select(task => Marked(task.Id, after, task.Lost)));

    /// <summary>The change with a word for every task that would lose a shot by it: that the task is as it is to be.</summary>
    /// <param name="change">A change that leads from one workshop to another, and to nothing else.</param>
    /// <param name="before">The workshop before it.</param>
    /// <param name="after">The workshop after it.</param>
    public static Change Keeping(Change change, Workshop before, Workshop after) =>
        With(change, By(change, before, after).Select(task => Marked(task.Id, after, [])));

    private static Change With(Change change, IEnumerable<TaskChange> more)
    {
        var added = more.ToList();
        return added.Count == 0 ? change : new Batch([change, .. added]);
    }

    private static TaskChange Marked(Id id, Workshop workshop, HashSet<Id> lost)
    {
        var task = workshop.Tasks.Find(id)!;
        return new TaskChange(id, task with
        {
            Shots = task.Shots.Select(shot => lost.Contains(shot.Id) ? shot with { State = ShotState.Lost } : shot).ToValueList(),
        });
    }

    private static IEnumerable<(Id Id, HashSet<Id> Lost)> By(Change change, Workshop before, Workshop after)
    {
        if (!change.Unfolded().Any(each => each is LogChange { To: not null }))
        {
            return [];
        }

        var told = change.Unfolded().OfType<TaskChange>().Select(each => each.Id).ToHashSet();
        var tasks = after.Tasks.Where(task => !told.Contains(task.Id) && task.Shots.Any(IsAtStake)).ToList();
        if (tasks.Count == 0)
        {
            return [];
        }

        var (was, now) = (new ShotMoments(before), new ShotMoments(after));
        return tasks
            .Select(task => (task.Id, Lost: task.Shots.Where(shot => IsAtStake(shot) && now.HavePassed(task, shot) && !was.HavePassed(task, shot))
                .Select(shot => shot.Id).ToHashSet()))
            .Where(task => task.Lost.Count > 0);
    }

    private static bool IsAtStake(Shot shot) => shot is { OnceOnly: true, State: ShotState.Missing };
}

/// <summary>Which moments of shots have passed, by the log.</summary>
internal sealed class ShotMoments
{
    private readonly Workshop workshop;
    private readonly WorkProgress progress;

    /// <summary>By the whole log.</summary>
    public ShotMoments(Workshop workshop)
        : this(workshop, new WorkProgress(workshop, Instant.MaxValue))
    {
    }

    /// <summary>By what the log says up to a moment.</summary>
    public ShotMoments(Workshop workshop, WorkProgress progress) => (this.workshop, this.progress) = (workshop, progress);

    /// <summary>Whether a shot of a task can't be taken any more in the state of the work that it shows.</summary>
    public bool HavePassed(WorkTask task, Shot shot) => shot.Moment switch
    {
        ShotMoment.Before => progress.HasStarted(task),
        ShotMoment.During => task.Stages.Count > 0 && progress.IsDone(task),
        _ => shot.LostBy is { } id && workshop.Tasks.Find(id) is { } lostBy && progress.HasStarted(lostBy),
    };
}
