using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>How a stretch of work ended.</summary>
public enum LogOutcome
{
    /// <summary>Begun and still going on.</summary>
    Begun,

    /// <summary>Worked on, not finished.</summary>
    Partly,

    /// <summary>Finished.</summary>
    Done,

    /// <summary>Failed; it must be done again, or what remains is said.</summary>
    Failed,
}

/// <summary>What was really done.</summary>
public sealed record LogEntry : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>When it began, for <see cref="LogOutcome.Begun"/>; else when it ended.</summary>
    public required Instant At { get; init; }

    /// <summary>The task, or absent for work on an episode's tail.</summary>
    public Id? Task { get; init; }

    /// <summary>The stage of the task; every stage of it where absent.</summary>
    public Id? Stage { get; init; }

    /// <summary>The episode whose tail was worked on.</summary>
    public Id? Episode { get; init; }

    /// <summary>The part of the tail; all of it where absent.</summary>
    public TailKind? Part { get; init; }

    /// <summary>Minutes worked, or minutes the machine ran.</summary>
    [Range(0, 600_000)]
    public int Minutes { get; init; }

    /// <summary>How it ended.</summary>
    public required LogOutcome Outcome { get; init; }

    /// <summary>Minutes still to do, as the maker sees it; computed from the estimate where absent.</summary>
    [Range(0, 600_000)]
    public int? RemainingMinutes { get; init; }

    /// <summary>The machine or person, where the stage leaves a choice.</summary>
    public Id? Station { get; init; }

    /// <summary>What happened, in the maker's words.</summary>
    [StringLength(4_000)]
    [ManyLines]
    public string? Note { get; init; }
}

/// <summary>A date given to anyone, kept for ever with its odds.</summary>
public sealed record ToldDate : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The episode it was about.</summary>
    public required Id Episode { get; init; }

    /// <summary>The public date that was named.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>The day it was said.</summary>
    public required LocalDate ToldOn { get; init; }

    /// <summary>To whom.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string To { get; init; }

    /// <summary>The odds said with it, above 0 and below 1.</summary>
    [Range(0.01, 0.99)]
    public decimal? Odds { get; init; }
}

/// <summary>Something to say on screen that is true only between two dates.</summary>
public sealed record TimedLine : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>What is to be said.</summary>
    [StringLength(1_000, MinimumLength = 1)]
    public required string Text { get; init; }

    /// <summary>The first day it is true.</summary>
    public required LocalDate From { get; init; }

    /// <summary>The last day it is true.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>The day it must be public by, where somebody paid for it.</summary>
    public LocalDate? DueBy { get; init; }

    /// <summary>The episode that carries it.</summary>
    public Id? Episode { get; init; }
}

/// <summary>A dated window at a place that can be missed.</summary>
public sealed record Booking : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The place.</summary>
    public required Id Place { get; init; }

    /// <summary>When the window opens, local time.</summary>
    public required LocalDateTime From { get; init; }

    /// <summary>When it closes, local time.</summary>
    public required LocalDateTime To { get; init; }

    /// <summary>What it costs, in the maker's currency.</summary>
    [Range(0, 1_000_000)]
    public decimal? Cost { get; init; }

    /// <summary>The last day to cancel.</summary>
    public LocalDate? CancelBy { get; init; }

    /// <summary>When the next window would open, if this one is missed.</summary>
    public LocalDateTime? NextWindow { get; init; }

    /// <summary>What it is for.</summary>
    [StringLength(500)]
    [ManyLines]
    public string? Note { get; init; }
}

/// <summary>An order of work and the next starts that the maker accepted.</summary>
public sealed record AcceptedPlan
{
    /// <summary>When it was accepted.</summary>
    public required Instant At { get; init; }

    /// <summary>The accepted starts, in order.</summary>
    public ValueList<AcceptedStart> Starts { get; init; } = [];
}

/// <summary>One accepted start.</summary>
public sealed record AcceptedStart
{
    /// <summary>The task, or absent for an episode's tail.</summary>
    public Id? Task { get; init; }

    /// <summary>The stage of the task.</summary>
    public Id? Stage { get; init; }

    /// <summary>The shot of the task that is to be filmed, in place of a stage.</summary>
    public Id? Shot { get; init; }

    /// <summary>The episode whose tail it is.</summary>
    public Id? Episode { get; init; }

    /// <summary>The part of the tail.</summary>
    public TailKind? Part { get; init; }

    /// <summary>The accepted moment.</summary>
    public required Instant Start { get; init; }
}
