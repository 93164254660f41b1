using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>A workshop: its version, by which writers follow each other, and what a list of workshops shows.</summary>
internal sealed class WorkshopRow
{
    public required string Id { get; set; }

    /// <summary>Who made it.</summary>
    public required string Owner { get; set; }

    public long Version { get; set; }

    public required string Name { get; set; }

    public Instant PlannedAt { get; set; }

    public Instant CreatedAt { get; set; }

    public Instant ChangedAt { get; set; }

    public Instant? DeletedAt { get; set; }
}
