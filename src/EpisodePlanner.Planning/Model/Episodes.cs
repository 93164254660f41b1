using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Parts of the work that turns footage into an episode.</summary>
public enum TailKind
{
    /// <summary>All of it as one stretch.</summary>
    Everything,

    /// <summary>Talking to camera.</summary>
    TalkToCamera,

    /// <summary>Pictures taken again or added.</summary>
    PickUps,

    /// <summary>A pass of editing.</summary>
    EditPass,

    /// <summary>Captions.</summary>
    Captions,

    /// <summary>The cover picture.</summary>
    CoverPicture,

    /// <summary>The description.</summary>
    Description,

    /// <summary>The last checks.</summary>
    Checks,

    /// <summary>Fixes that early viewers ask for.</summary>
    Fixes,
}

/// <summary>One part of an episode's tail: attended work at a desk.</summary>
public sealed record TailPart
{
    /// <summary>Which part.</summary>
    public required TailKind Kind { get; init; }

    /// <summary>The likely length, hours.</summary>
    [Range(0, 1_000)]
    public required decimal Hours { get; init; }

    /// <summary>Hardly ever less, hours.</summary>
    [Range(0, 1_000)]
    public decimal? LowHours { get; init; }

    /// <summary>Hardly ever more, hours.</summary>
    [Range(0, 1_000)]
    public decimal? HighHours { get; init; }
}

/// <summary>A cut through a series: what one upload shows.</summary>
public sealed record Episode : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The working title.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Title { get; init; }

    /// <summary>The series it tells.</summary>
    public required Id Series { get; init; }

    /// <summary>The milestones it shows, in story order.</summary>
    [MaxLength(200)]
    public ValueList<Id> Milestones { get; init; } = [];

    /// <summary>The log entry that it tells about, such as a failure; it needs no milestone then.</summary>
    public Id? Tells { get; init; }

    /// <summary>The maker fixed what it shows; no proposal moves it.</summary>
    public bool CutPinned { get; init; }

    /// <summary>The maker fixed when it goes out: the local opening of a slot.</summary>
    public LocalDateTime? PinnedSlot { get; init; }

    /// <summary>Its own tail; the settings' where empty.</summary>
    [MaxLength(50)]
    public ValueList<TailPart> Tail { get; init; } = [];

    /// <summary>How long before the public moment supporters may watch, hours; the settings' where absent.</summary>
    [Range(0, 1_000)]
    public decimal? EarlyViewHours { get; init; }

    /// <summary>Whatever else helps.</summary>
    [StringLength(4_000)]
    [ManyLines]
    public string? Note { get; init; }
}

/// <summary>When the channel may publish, again and again.</summary>
public sealed record SlotRule : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The first day of the recurrence.</summary>
    public required LocalDate From { get; init; }

    /// <summary>When a window opens, local time.</summary>
    public required LocalTime At { get; init; }

    /// <summary>The recurrence, an RFC 5545 RRULE value: "FREQ=WEEKLY;BYDAY=FR".</summary>
    [StringLength(500, MinimumLength = 1)]
    public required string Rule { get; init; }

    /// <summary>How long a window stays open, minutes; 0 is a moment.</summary>
    [Range(0, 20_160)]
    public int WindowMinutes { get; init; }

    /// <summary>Days of the recurrence that are left out.</summary>
    [MaxLength(1_000)]
    [AnyOrder]
    public ValueList<LocalDate> Except { get; init; } = [];

    /// <summary>The series that may use it; all where empty.</summary>
    [MaxLength(200)]
    [AnyOrder]
    public ValueList<Id> Series { get; init; } = [];
}

/// <summary>A public upload that was made.</summary>
public sealed record Upload : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>Its series.</summary>
    public required Id Series { get; init; }

    /// <summary>The local date of the public moment; silence counts by it.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What it was called.</summary>
    [StringLength(200, MinimumLength = 1)]
    public string? Title { get; init; }

    /// <summary>The episode that went out.</summary>
    public Id? Episode { get; init; }
}
