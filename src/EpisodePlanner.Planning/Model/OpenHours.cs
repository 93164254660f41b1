using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>When a station is open, in the local time of the workshop's zone.</summary>
public sealed record OpenHours
{
    /// <summary>The hours that come back every week; several lines for one day add up.</summary>
    [AnyOrder]
    public ValueList<WeeklyHours> Weekly { get; init; } = [];

    /// <summary>Days that are closed, and hours that are open besides the weekly ones.</summary>
    [AnyOrder]
    public ValueList<DatedHours> Dated { get; init; } = [];

    /// <summary>Times taken by something outside the workshop.</summary>
    [AnyOrder]
    public ValueList<BusyTime> Busy { get; init; } = [];
}

/// <summary>Hours that come back on the same days of every week.</summary>
public sealed record WeeklyHours
{
    /// <summary>The days on which the hours begin.</summary>
    [MinLength(1)]
    [AnyOrder]
    public required ValueList<IsoDayOfWeek> Days { get; init; }

    /// <summary>When they begin, local time.</summary>
    public required LocalTime From { get; init; }

    /// <summary>When they end; at or before <see cref="From"/> it means on the next day, so 00:00 to 00:00 is a whole day.</summary>
    public required LocalTime To { get; init; }
}

/// <summary>Whether dated hours open or close.</summary>
public enum DatedHoursKind
{
    /// <summary>Closed on these days, or between these times of each of them.</summary>
    Closed,

    /// <summary>Open between these times on each of these days, besides the weekly hours.</summary>
    Extra,
}

/// <summary>A change to the weekly hours on one day or several days in a row.</summary>
public sealed record DatedHours
{
    /// <summary>Closed or extra.</summary>
    public required DatedHoursKind Kind { get; init; }

    /// <summary>The first day.</summary>
    public required LocalDate On { get; init; }

    /// <summary>The last day; the first where absent.</summary>
    public LocalDate? Through { get; init; }

    /// <summary>From this time of each day; the whole day where absent. Extra hours need it.</summary>
    public LocalTime? From { get; init; }

    /// <summary>Until this time; at or before <see cref="From"/> it means on the next day.</summary>
    public LocalTime? To { get; init; }

    /// <summary>Why, for people.</summary>
    [StringLength(500)]
    [ManyLines]
    public string? Note { get; init; }
}

/// <summary>A stretch taken by something outside the workshop: a shift, a journey, a family day.</summary>
public sealed record BusyTime
{
    /// <summary>When it begins, local time.</summary>
    public required LocalDateTime From { get; init; }

    /// <summary>When it ends, local time, after <see cref="From"/>.</summary>
    public required LocalDateTime To { get; init; }

    /// <summary>What it is, for people.</summary>
    [StringLength(500)]
    [ManyLines]
    public string? Note { get; init; }
}
