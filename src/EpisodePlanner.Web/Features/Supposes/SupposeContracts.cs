using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>What somebody supposes.</summary>
internal sealed record SupposeRequest
{
    /// <summary>What it is called.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The version of the workshop it is made from; the newest where absent.</summary>
    [Range(1, Versions.Most)]
    public long? Base { get; init; }

    /// <summary>The changes in order, at most 10,000.</summary>
    [MaxLength(10_000)]
    public ValueList<Change> Changes { get; init; } = [];
}

/// <summary>A draft of changes beside the real plan.</summary>
internal sealed record SupposeView
{
    /// <summary>Its id.</summary>
    public required Id Id { get; init; }

    /// <summary>Its own version: 1 when it was made; its ETag is the same.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>What it is called.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The version of the workshop it was made from.</summary>
    [Range(1, Versions.Most)]
    public required long Base { get; init; }

    /// <summary>The changes in order.</summary>
    public required ValueList<Change> Changes { get; init; }

    /// <summary>Who changed it last.</summary>
    [StringLength(200)]
    public required string Who { get; init; }

    /// <summary>When it was changed last.</summary>
    public required Instant At { get; init; }

    /// <summary>A draft of the store.</summary>
    public static SupposeView Of(Suppose suppose) => new()
    {
        Id = suppose.Id,
        Version = suppose.Version,
        Name = suppose.Name,
        Base = suppose.Base,
        Changes = suppose.Changes.Changes,
        Who = suppose.Who,
        At = suppose.At,
    };
}

/// <summary>The drafts of a workshop, the newest first.</summary>
internal sealed record SupposeList
{
    /// <summary>The drafts.</summary>
    public required ValueList<SupposeView> Items { get; init; }
}
