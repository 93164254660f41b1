using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Work that leads to a milestone: a task, made of stages.</summary>
public sealed record WorkTask : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The work in words: "weld frame".</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The kind of work; decides cautions, and later whose history calibrates it.</summary>
    public WorkKind Kind { get; init; }

    /// <summary>The milestone it leads to.</summary>
    public Id? Milestone { get; init; }

    /// <summary>The series it belongs to where it leads to no milestone; absent for work on the workshop itself.</summary>
    public Id? Series { get; init; }

    /// <summary>Its stages in working order.</summary>
    [MaxLength(100)]
    public ValueList<Stage> Stages { get; init; } = [];

    /// <summary>What it waits for.</summary>
    [MaxLength(200)]
    [AnyOrder]
    public ValueList<TaskLink> Links { get; init; } = [];

    /// <summary>The pictures the story needs from it.</summary>
    [MaxLength(100)]
    [AnyOrder]
    public ValueList<Shot> Shots { get; init; } = [];

    /// <summary>Extra minutes at the first attended stage because it is filmed.</summary>
    [Range(0, 6_000)]
    public int FilmingMinutes { get; init; }

    /// <summary>Whether its runs may go on with nobody there; the machine must allow it too.</summary>
    public bool MayRunAlone { get; init; }

    /// <summary>Not before this day begins.</summary>
    public LocalDate? NotBefore { get; init; }

    /// <summary>Needed by the end of this day for a reason outside.</summary>
    public LocalDate? NeededBy { get; init; }

    /// <summary>Whatever else helps.</summary>
    [StringLength(4_000)]
    [ManyLines]
    public string? Note { get; init; }
}

/// <summary>What one link waits for.</summary>
public sealed record TaskLink
{
    /// <summary>The task it leaves from.</summary>
    public required Id Task { get; init; }

    /// <summary>Which end of that task holds which end of this one; the start or finish must come at least the lag later.</summary>
    public LinkKind Kind { get; init; }

    /// <summary>The least lag in minutes; negative only for elapsed minutes.</summary>
    [Range(-600_000, 600_000)]
    public int LagMinutes { get; init; }

    /// <summary>Whether the lag counts every minute or open minutes only.</summary>
    public LagClock LagClock { get; init; }

    /// <summary>The station whose open minutes a working lag counts; presence where absent.</summary>
    public Id? LagStation { get; init; }

    /// <summary>The greatest lag in elapsed minutes (a recoat window, a pot life); unbounded where absent.</summary>
    [Range(0, 600_000)]
    public int? AtMostMinutes { get; init; }

    /// <summary>Made by the tool from the order in which lines were written.</summary>
    public bool Assumed { get; init; }
}

/// <summary>What a lag counts.</summary>
public enum LagClock
{
    /// <summary>Every minute.</summary>
    Elapsed,

    /// <summary>Open minutes of a station, or minutes with somebody present.</summary>
    Working,
}

/// <summary>When a shot must be taken, seen from its task.</summary>
public enum ShotMoment
{
    /// <summary>Before the task begins.</summary>
    Before,

    /// <summary>While the task is done.</summary>
    During,

    /// <summary>After the task is done.</summary>
    After,
}

/// <summary>Whether a shot is there.</summary>
public enum ShotState
{
    /// <summary>Still to be taken.</summary>
    Missing,

    /// <summary>Taken.</summary>
    Got,

    /// <summary>Can't be taken any more.</summary>
    Lost,
}

/// <summary>A picture the story needs.</summary>
public sealed record Shot : IThing
{
    /// <summary>The id, unique within its task.</summary>
    public Id Id { get; init; }

    /// <summary>The picture in words: "inside the gearbox".</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>Before, during or after the task.</summary>
    public ShotMoment Moment { get; init; } = ShotMoment.During;

    /// <summary>Can't be taken again once the work has gone on.</summary>
    public bool OnceOnly { get; init; }

    /// <summary>The cut can't do without it.</summary>
    public bool Required { get; init; }

    /// <summary>Missing, got or lost.</summary>
    public ShotState State { get; init; }

    /// <summary>How long it takes to film, minutes.</summary>
    [Range(0, 1_440)]
    public int Minutes { get; init; }

    /// <summary>For a shot after its task: the later task whose start makes it impossible.</summary>
    public Id? LostBy { get; init; }
}
