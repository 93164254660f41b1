using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Planning;

/// <summary>Something with an id of its own: unique among its kind; a stage or shot, within its task.</summary>
public interface IThing
{
    /// <summary>The id, unique among things of its kind.</summary>
    Id Id { get; }
}

/// <summary>A pair of hands.</summary>
public sealed record Person : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The name people use.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>When these hands are free; where absent, evenings are assumed.</summary>
    public OpenHours? Hours { get; init; }
}

/// <summary>Kinds of machine; the kind decides whether it can ever run with nobody there.</summary>
public enum MachineKind
{
    /// <summary>Any other machine, or one whose kind is unknown: never alone.</summary>
    Other,

    /// <summary>A machine that prints parts layer by layer: may be allowed to run alone.</summary>
    Printer,

    /// <summary>A router: never alone.</summary>
    Router,

    /// <summary>A laser cutter: never alone.</summary>
    Laser,

    /// <summary>A mill: never alone.</summary>
    Mill,

    /// <summary>A lathe: never alone.</summary>
    Lathe,

    /// <summary>A saw: never alone.</summary>
    Saw,

    /// <summary>A welding set: never alone.</summary>
    Welder,

    /// <summary>An oven or kiln: never alone.</summary>
    Oven,
}

/// <summary>A machine that one stage at a time can use.</summary>
public sealed record Machine : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The name people use.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required MachineKind Kind { get; init; }

    /// <summary>Whether its owner lets it run with nobody there; only kinds on the allow-list can (<see cref="RunningAlone"/>).</summary>
    public bool MayRunAlone { get; init; }

    /// <summary>The place it stands in, whose quiet hours bind its loud stages.</summary>
    public Id? Place { get; init; }

    /// <summary>When it may work; always where absent.</summary>
    public OpenHours? Hours { get; init; }
}

/// <summary>Kinds of place.</summary>
public enum PlaceKind
{
    /// <summary>A bench for making.</summary>
    Bench,

    /// <summary>A desk for editing and drawing.</summary>
    Desk,

    /// <summary>Outdoors.</summary>
    Outdoors,

    /// <summary>A site that is rented or borrowed.</summary>
    Rented,
}

/// <summary>A place that one stage at a time can fill.</summary>
public sealed record Place : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The name people use.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required PlaceKind Kind { get; init; }

    /// <summary>When it can be used; always where absent.</summary>
    public OpenHours? Hours { get; init; }

    /// <summary>When nothing loud may be done there.</summary>
    [AnyOrder]
    public ValueList<WeeklyHours> Quiet { get; init; } = [];

    /// <summary>Open only inside its <see cref="Booking"/>s.</summary>
    public bool ByBookingOnly { get; init; }

    /// <summary>Usable between sunrise and sunset only; needs coordinates.</summary>
    public bool DaylightOnly { get; init; }

    /// <summary>Degrees north, −90 to 90.</summary>
    [Range(-90, 90)]
    public decimal? Latitude { get; init; }

    /// <summary>Degrees east, −180 to 180.</summary>
    [Range(-180, 180)]
    public decimal? Longitude { get; init; }

    /// <summary>The chance that a day's weather lets work happen there, above 0 to 1; certain where absent.</summary>
    [Range(0.01, 1)]
    public decimal? FitDayChance { get; init; }

    /// <summary>Minutes to set up at each sitting.</summary>
    [Range(0, 480)]
    public int SetUpMinutes { get; init; }

    /// <summary>Minutes to tidy at the end of each sitting.</summary>
    [Range(0, 480)]
    public int TidyMinutes { get; init; }
}
