using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>What became of a request that may be repeated.</summary>
internal sealed class RequestKeyRow
{
    /// <summary>Where keys are told apart: within a workshop, or among those that make workshops.</summary>
    public required string Scope { get; set; }

    public required string Key { get; set; }

    public required string Fingerprint { get; set; }

    public Instant At { get; set; }

    /// <summary>The workshop that was made or changed.</summary>
    public required string Workshop { get; set; }

    /// <summary>The version that the change led to; null where a draft was made.</summary>
    public long? Version { get; set; }

    /// <summary>The draft that was made.</summary>
    public string? Suppose { get; set; }
}
