using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Which stretch of work is meant: a stage of a task, a shot of a task, or a part of an episode's tail.</summary>
/// <param name="Task">The task; empty for a tail.</param>
/// <param name="Stage">The stage of the task; empty for a shot and for a tail.</param>
/// <param name="Episode">The episode whose tail it is; empty for a task.</param>
/// <param name="Part">Its position in the tail, from 0; −1 for a task.</param>
public readonly record struct StageKey(Id Task, Id Stage, Id Episode, int Part)
{
    /// <summary>The shot of the task that is to be filmed; empty for all other work.</summary>
    public Id Shot { get; private init; }

    /// <summary>Whether it belongs to an episode's tail.</summary>
    public bool IsTail => Part >= 0;

    /// <summary>Whether it is a shot that is filmed in a stretch of its own.</summary>
    public bool IsShot => !Shot.IsEmpty;

    /// <summary>Whether it is a stage of a task.</summary>
    public bool IsTask => !IsTail && !IsShot;

    /// <summary>A stage of a task.</summary>
    public static StageKey OfTask(Id task, Id stage) => new(task, stage, default, -1);

    /// <summary>A shot of a task, filmed in a stretch of its own.</summary>
    public static StageKey OfShot(Id task, Id shot) => new(task, default, default, -1) { Shot = shot };

    /// <summary>A part of an episode's tail.</summary>
    public static StageKey OfTail(Id episode, int part) => new(default, default, episode, part);
}

/// <summary>One part of a planned stage.</summary>
/// <param name="Kind">Work, load, run, unload or wait.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Stations">The people, machines and places it takes, by id.</param>
public sealed record PlannedPart(PartKind Kind, Instant Start, Instant End, ValueList<Id> Stations);

/// <summary>A stage that is left to do, a shot to film, or a part of a tail.</summary>
public sealed record PlannedStage
{
    private readonly Lazy<PlannedCause?>? cause;

    /// <summary>Which one.</summary>
    public required StageKey Key { get; init; }

    /// <summary>Its index in <see cref="Plan.Schedule"/>.</summary>
    public required int Index { get; init; }

    /// <summary>Task and stage in words: "weld frame", "hull panel: cure", "film ‘the empty bed’".</summary>
    public required string Name { get; init; }

    /// <summary>The series it serves; empty for work on the workshop itself.</summary>
    public required Id Series { get; init; }

    /// <summary>Attended, run or wait.</summary>
    public required StageKind Kind { get; init; }

    /// <summary>The kind of work; <see cref="WorkKind.Edit"/> for tails, <see cref="WorkKind.Film"/> for shots.</summary>
    public required WorkKind Work { get; init; }

    /// <summary>Minutes left by the planning value.</summary>
    public required int Minutes { get; init; }

    /// <summary>Whether it is going on now.</summary>
    public required bool Begun { get; init; }

    /// <summary>A run that goes on, at some time, with nobody there.</summary>
    public required bool RunsAlone { get; init; }

    /// <summary>When what happens; empty where it has no date.</summary>
    public required ValueList<PlannedPart> Parts { get; init; }

    /// <summary>Why it does not start earlier; null where it has no date. Found when it is first asked for.</summary>
    public PlannedCause? Cause
    {
        get => cause?.Value;
        init => cause = new Lazy<PlannedCause?>(value);
    }

    /// <summary>Its place in the network; null where it can never be done.</summary>
    public required NetworkDates? Network { get; init; }

    internal Func<PlannedCause?> CauseLater
    {
        init => cause = new Lazy<PlannedCause?>(value);
    }

    /// <summary>When it starts, or null.</summary>
    public Instant? Start => Parts.Count == 0 ? null : Parts[0].Start;

    /// <summary>When it is finished, or null.</summary>
    public Instant? Finish => Parts.Count == 0 ? null : Parts[^1].End;
}

/// <summary>Dates of a stage when nobody has to wait for a station.</summary>
/// <param name="EarlyStart">The earliest start.</param>
/// <param name="EarlyFinish">The earliest finish.</param>
/// <param name="LateStart">The latest start that leaves the end of all work where it is.</param>
/// <param name="LateFinish">The finish that belongs to it.</param>
/// <param name="TotalFloat">Late start less early start, elapsed minutes.</param>
/// <param name="FreeFloat">How far the finish may slip without moving another stage, elapsed minutes.</param>
/// <param name="Critical">Whether it decides the end of all work.</param>
public sealed record NetworkDates(
    Instant EarlyStart,
    Instant EarlyFinish,
    Instant LateStart,
    Instant LateFinish,
    int TotalFloat,
    int FreeFloat,
    bool Critical);

/// <summary>Why a stage does not start earlier.</summary>
/// <param name="Kind">What holds it.</param>
/// <param name="Says">In words, to follow "because".</param>
/// <param name="Stage">The stage that is waited for or holds the station, or null.</param>
/// <param name="Station">The station that is held or closed, or null.</param>
/// <param name="CoBlockers">What holds it at the same time, in words.</param>
public sealed record PlannedCause(CauseKind Kind, string Says, StageKey? Stage, Id? Station, ValueList<string> CoBlockers);
