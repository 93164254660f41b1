using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>One stretch of a task.</summary>
public sealed record Stage : IThing
{
    /// <summary>The id, unique within its task; its place in the list (1, 2, …) where a hand-written file leaves it out.</summary>
    public Id Id { get; init; }

    /// <summary>The stretch in words, where the task's name does not say it.</summary>
    [StringLength(200, MinimumLength = 1)]
    public string? Name { get; init; }

    /// <summary>Hands on, a machine running, or waiting.</summary>
    public StageKind Kind { get; init; }

    /// <summary>The likely length in hours: work of an attended stage, machine time of a run, elapsed time of a wait.</summary>
    [Range(0, 10_000)]
    public required decimal Hours { get; init; }

    /// <summary>Hardly ever less, hours; assumed from <see cref="Hours"/> where absent.</summary>
    [Range(0, 10_000)]
    public decimal? LowHours { get; init; }

    /// <summary>Hardly ever more, hours; assumed from <see cref="Hours"/> where absent.</summary>
    [Range(0, 10_000)]
    public decimal? HighHours { get; init; }

    /// <summary>A wait counted in business days (Monday to Friday) instead of hours.</summary>
    [Range(1, 1_000)]
    public int? BusinessDays { get; init; }

    /// <summary>
    /// The stations it needs together; each inner list is a choice, one of these. An attended stage that names no
    /// person takes any one of the people; a run names one choice of machines; a wait may name a place it fills.
    /// </summary>
    [MaxLength(20)]
    [AnyOrder]
    public ValueList<ValueList<Id>> Needs { get; init; } = [];

    /// <summary>The shortest stretch worth beginning, minutes; assumed where absent.</summary>
    [Range(0, 1_440)]
    public int? MinimumBlockMinutes { get; init; }

    /// <summary>Must be done in one stretch.</summary>
    public bool Unbroken { get; init; }

    /// <summary>Its machines and places stay taken while people pause.</summary>
    public bool StaysSetUp { get; init; }

    /// <summary>Loud: not in the quiet hours of its places.</summary>
    public bool Loud { get; init; }

    /// <summary>Minutes to load a run.</summary>
    [Range(0, 1_440)]
    public int LoadMinutes { get; init; }

    /// <summary>Minutes to unload a run.</summary>
    [Range(0, 1_440)]
    public int UnloadMinutes { get; init; }

    /// <summary>The only times of day at which a run is looked at; whenever somebody is present where empty.</summary>
    [MaxLength(24)]
    [AnyOrder]
    public ValueList<LocalTime> LookAt { get; init; } = [];

    /// <summary>The chance that it fails and must be done again, 0 to 0.95.</summary>
    [Range(0, 0.95)]
    public decimal FailureChance { get; init; }

    /// <summary>A wait that may be put off again and again (a delivery "expected again"): its tail is heavy.</summary>
    public bool MayComeLater { get; init; }
}
