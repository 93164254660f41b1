using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>A draft of changes.</summary>
internal sealed class SupposeRow
{
    public required string Workshop { get; set; }

    public required string Id { get; set; }

    public long Version { get; set; }

    public required string Name { get; set; }

    /// <summary>The version of the workshop it was made from.</summary>
    public long Base { get; set; }

    /// <summary>The changes as JSON.</summary>
    public required string Changes { get; set; }

    public required string Who { get; set; }

    public Instant At { get; set; }
}
