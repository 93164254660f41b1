using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Writing;

/// <summary>Whose time a log entry counts.</summary>
internal enum Effort
{
    /// <summary>Work by hand.</summary>
    Hands,

    /// <summary>A machine running.</summary>
    Machine,

    /// <summary>Time passing.</summary>
    Waiting,

    /// <summary>The entry covers stages of several kinds, so it can't be told.</summary>
    Mixed,
}

/// <summary>One log entry with what it takes to tell it.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Name">Task and stage in words, or the part of the tail.</param>
/// <param name="Effort">Whose time its minutes are.</param>
/// <param name="Machine">The machine's name, where the entry says it.</param>
/// <param name="Failures">Earlier entries in which the same work failed.</param>
/// <param name="Last">Whether no later entry is about the same work.</param>
internal sealed record WorkDone(
    LogEntry Entry, string Name, Effort Effort, string? Machine, ValueList<LogEntry> Failures, bool Last)
{
    public static IEnumerable<WorkDone> Of(WorkTask task, Ledger ledger)
    {
        var entries = ledger.LogOf(task).ToList();
        return entries.Select((entry, i) => Of(task, entry, entries[..i], entries[(i + 1)..], ledger.Workshop));
    }

    public static IEnumerable<WorkDone> Of(PlannedEpisode episode, Ledger ledger) => ledger.LogOf(episode)
        .Select(entry => new WorkDone(entry, TailWords.Of(entry.Part), Effort.Hands, null, [], false));

    private static WorkDone Of(
        WorkTask task, LogEntry entry, List<LogEntry> earlier, List<LogEntry> later, Workshop workshop)
    {
        var stage = task.Stages.FirstOrDefault(stage => stage.Id == entry.Stage);
        var machine = entry.Station is { } id ? workshop.Machines.Find(id)?.Name : null;
        var failures = earlier.Where(other => other.Outcome == LogOutcome.Failed && SameWork(other, entry));
        var last = !later.Any(other => SameWork(other, entry));
        return new WorkDone(entry, Named(task, stage), EffortOf(task, entry), machine, failures.ToValueList(), last);
    }

    private static string Named(WorkTask task, Stage? stage) =>
        stage?.Name is { } name ? $"{task.Name}: {name}" : task.Name;

    private static bool SameWork(LogEntry one, LogEntry other) =>
        one.Stage is null || other.Stage is null || one.Stage == other.Stage;

    private static Effort EffortOf(WorkTask task, LogEntry entry)
    {
        var kinds = task.Stages
            .Where(stage => entry.Stage is null || stage.Id == entry.Stage)
            .Select(stage => stage.Kind)
            .Distinct()
            .ToList();
        return kinds is [var kind] ? EffortOf(kind) : Effort.Mixed;
    }

    private static Effort EffortOf(StageKind kind) => kind switch
    {
        StageKind.Run => Effort.Machine,
        StageKind.Wait => Effort.Waiting,
        _ => Effort.Hands,
    };
}
