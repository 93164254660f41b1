using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Workshops;

/// <summary>What a workshop is called, and where it is.</summary>
internal sealed record WorkshopAbout
{
    /// <summary>The workshop's name.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The IANA time zone in which all local times are read: "Europe/Dublin".</summary>
    [StringLength(100, MinimumLength = 1)]
    public required string Zone { get; init; }

    /// <summary>The change that makes a workshop so.</summary>
    public Change ToChange() => new Batch([new NameChange(Name), new ZoneChange(Zone)]);
}

/// <summary>A workshop without its things.</summary>
internal sealed record WorkshopHead
{
    /// <summary>Its id, a UUIDv7.</summary>
    public required Id Id { get; init; }

    /// <summary>The workshop's name.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The IANA time zone in which all local times are read: "Europe/Dublin".</summary>
    [StringLength(100, MinimumLength = 1)]
    public required string Zone { get; init; }

    /// <summary>Its version: 1 when it was made, one more with every change; its ETag is the same.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>The moment from which its plan looks ahead, whole minutes.</summary>
    public required Instant PlannedAt { get; init; }

    /// <summary>The head of a stored workshop.</summary>
    public static WorkshopHead Of(Snapshot now) => new()
    {
        Id = now.Id,
        Name = now.Workshop.Name,
        Zone = now.Workshop.Zone,
        Version = now.Version,
        PlannedAt = now.PlannedAt,
    };
}

/// <summary>The workshops that are there, or those that were deleted.</summary>
internal sealed record WorkshopList
{
    /// <summary>The workshops; those that are there by name, deleted ones the latest first.</summary>
    public required ValueList<WorkshopItem> Items { get; init; }

    /// <summary>A list of stored workshops.</summary>
    public static WorkshopList Of(IEnumerable<WorkshopLine> lines) => new() { Items = lines.Select(WorkshopItem.Of).ToValueList() };
}

/// <summary>A workshop in a list.</summary>
internal sealed record WorkshopItem
{
    /// <summary>Its id.</summary>
    public required Id Id { get; init; }

    /// <summary>Its name.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>Its version.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>When it was changed last.</summary>
    public required Instant ChangedAt { get; init; }

    /// <summary>When it was deleted; absent where it is there.</summary>
    public Instant? DeletedAt { get; init; }

    /// <summary>Until when it can be brought back, where it was deleted.</summary>
    public Instant? KeptUntil { get; init; }

    /// <summary>A line of the store.</summary>
    public static WorkshopItem Of(WorkshopLine line) => new()
    {
        Id = line.Id,
        Name = line.Name,
        Version = line.Version,
        ChangedAt = line.ChangedAt,
        DeletedAt = line.DeletedAt,
        KeptUntil = line.DeletedAt + WorkshopStore.DeletedKept,
    };
}
