using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Log entries for work that is told by one tap: begun, done, not yet, failed.</summary>
public static class TapLog
{
    private const int MostMinutes = 600_000;

    /// <summary>
    /// The entry about a stretch of work. Where it was begun before, the minutes since then are those worked; else they
    /// are not known and stay 0.
    /// </summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="key">The stage of a task, or the part of a tail.</param>
    /// <param name="outcome">What became of it.</param>
    /// <param name="at">The moment of the tap.</param>
    /// <param name="id">The entry's id.</param>
    /// <returns>The entry; null where there is no such stretch of work any more, and for a shot, which the log does not know.</returns>
    public static LogEntry? Of(Workshop workshop, StageKey key, LogOutcome outcome, Instant at, Id id)
    {
        var entry = new LogEntry
        {
            Id = id,
            At = at,
            Outcome = outcome,
            Minutes = outcome == LogOutcome.Begun ? 0 : Worked(workshop, key, at),
        };
        return key.IsShot ? null
            : !key.IsTail ? entry with { Task = key.Task, Stage = key.Stage }
            : PartOf(workshop, key) is { } part ? entry with { Episode = key.Episode, Part = part }
            : null;
    }

    /// <summary>
    /// The change that a tap makes: an entry of the log; of a shot, that it was got ("done") or is lost ("failed").
    /// </summary>
    /// <inheritdoc cref="Of" path="/param"/>
    /// <returns>The change; null where there is nothing to tell of.</returns>
    public static Change? Change(Workshop workshop, StageKey key, LogOutcome outcome, Instant at, Id id)
    {
        if (!key.IsShot)
        {
            return Of(workshop, key, outcome, at, id) is { } entry ? ThingKinds.Log.Put(entry) : null;
        }

        ShotState? state = outcome switch { LogOutcome.Done => ShotState.Got, LogOutcome.Failed => ShotState.Lost, _ => null };
        return state is { } told && workshop.Tasks.Find(key.Task) is { } task && task.Shots.Any(shot => shot.Id == key.Shot)
            ? new TaskChange(task.Id, task with
            {
                Shots = task.Shots.Select(shot => shot.Id == key.Shot ? shot with { State = told } : shot).ToValueList(),
            })
            : null;
    }

    /// <summary>When a stretch of work that goes on was begun; null where it does not go on.</summary>
    public static Instant? BegunAt(Workshop workshop, StageKey key, Instant now) => new WorkProgress(workshop, now).Of(key).RunningSince;

    private static int Worked(Workshop workshop, StageKey key, Instant at) =>
        BegunAt(workshop, key, at) is { } since
            ? (int)Math.Clamp((at - since).TotalMinutes, 0, MostMinutes)
            : 0;

    private static TailKind? PartOf(Workshop workshop, StageKey key)
    {
        var tail = Tails.Of(workshop, workshop.Episodes.Find(key.Episode));
        return key.Part < tail.Count ? tail[key.Part].Kind : null;
    }
}
