using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>How far a stretch of work has come.</summary>
/// <param name="Worked">Minutes worked since it last began from nothing.</param>
/// <param name="Remaining">Minutes that the maker said remain, or null.</param>
/// <param name="DoneAt">When it was done, or null.</param>
/// <param name="StartedAt">When work on it first ended or began, or null.</param>
/// <param name="RunningSince">When it began, where it is going on now, or null.</param>
/// <param name="Station">The machine or person it is going on with, or null.</param>
internal sealed record StageProgress(
    int Worked, int? Remaining, Instant? DoneAt, Instant? StartedAt, Instant? RunningSince, Id? Station)
{
    public static readonly StageProgress Untouched = new(0, null, null, null, null, null);

    public bool IsDone => DoneAt is not null;

    public bool IsStarted => StartedAt is not null;

    public StageProgress After(LogEntry entry)
    {
        var started = StartedAt ?? entry.At;
        return entry.Outcome switch
        {
            LogOutcome.Begun => this with { StartedAt = started, RunningSince = entry.At, Station = entry.Station },
            LogOutcome.Partly => this with
            {
                Worked = Worked + entry.Minutes,
                Remaining = entry.RemainingMinutes,
                StartedAt = started,
                RunningSince = null,
                DoneAt = null,
            },
            LogOutcome.Done => this with { DoneAt = entry.At, StartedAt = started, RunningSince = null },
            _ => new StageProgress(0, entry.RemainingMinutes, null, started, null, null),
        };
    }

    /// <summary>Minutes left of an estimate: what the maker said, or the estimate less what was worked, but never nothing.</summary>
    public int Left(int estimate)
    {
        var floor = (int)Math.Ceiling(estimate * Defaults.LeastRemaining);
        return Remaining ?? Math.Max(estimate - Worked, floor);
    }
}

/// <summary>How far the work of a workshop has come at a moment, from its log.</summary>
internal sealed class WorkProgress
{
    private readonly Dictionary<StageKey, StageProgress> stages = [];

    public WorkProgress(Workshop workshop, Instant now)
    {
        foreach (var entry in workshop.Log.Where(e => e.At <= now).OrderBy(e => e.At).ThenBy(e => e.Id))
        {
            foreach (var key in Keys(workshop, entry))
            {
                stages[key] = Of(key).After(entry);
            }
        }
    }

    public StageProgress Of(StageKey key) => stages.GetValueOrDefault(key, StageProgress.Untouched);

    /// <summary>Whether every stage of a task is done.</summary>
    public bool IsDone(WorkTask task) => task.Stages.All(stage => Of(StageKey.OfTask(task.Id, stage.Id)).IsDone);

    /// <summary>Whether a stage of a task was begun, worked on or finished.</summary>
    public bool HasStarted(WorkTask task) => task.Stages.Any(stage => Of(StageKey.OfTask(task.Id, stage.Id)).IsStarted);

    /// <summary>What an entry is about: the stage it names; all that is left where it says "done", else the next stage.</summary>
    private IEnumerable<StageKey> Keys(Workshop workshop, LogEntry entry)
    {
        var all = entry.Task is { } task ? KeysOfTask(workshop, task) : KeysOfTail(workshop, entry.Episode ?? default, entry.Part);
        if (entry.Stage is { } stage)
        {
            return [StageKey.OfTask(entry.Task!.Value, stage)];
        }

        var left = all.Where(key => !Of(key).IsDone).ToList();
        return entry.Outcome == LogOutcome.Done ? left : left.Take(1);
    }

    private static IEnumerable<StageKey> KeysOfTask(Workshop workshop, Id task) =>
        workshop.Tasks.Find(task)?.Stages.Select(stage => StageKey.OfTask(task, stage.Id)) ?? [];

    private static IEnumerable<StageKey> KeysOfTail(Workshop workshop, Id episode, TailKind? part)
    {
        var tail = Tails.Of(workshop, workshop.Episodes.Find(episode));
        return Enumerable.Range(0, tail.Count)
            .Where(i => part is null || tail[i].Kind == part)
            .Select(i => StageKey.OfTail(episode, i));
    }
}

/// <summary>The tails of episodes.</summary>
internal static class Tails
{
    /// <summary>An episode's own tail, or the settings', or the assumed one.</summary>
    public static ValueList<TailPart> Of(Workshop workshop, Episode? episode)
    {
        if (episode is { Tail.Count: > 0 })
        {
            return episode.Tail;
        }

        return workshop.Settings.Tail.Count > 0 ? workshop.Settings.Tail : Defaults.Tail;
    }
}
