using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Changing;

/// <summary>Several changes, made all or none.</summary>
internal sealed record ChangeRequest
{
    /// <summary>
    /// The version of the workshop that the changes were made from: they are refused where something they touch was changed
    /// after it. Needed where there is no If-Match, which asks for the whole workshop to be unchanged.
    /// </summary>
    [Range(1, Versions.Most)]
    public long? Base { get; init; }

    /// <summary>The changes in order, 1 to 10,000; the rules hold after the last.</summary>
    [MinLength(1)]
    [MaxLength(10_000)]
    public required ValueList<Change> Changes { get; init; }
}

/// <summary>What a history can be asked.</summary>
internal sealed record HistoryQuery
{
    /// <summary>At most so many changes; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only changes that led to a version before this one: the "next" of the page before.</summary>
    [Range(1, Versions.Most)]
    public long? Before { get; init; }
}

/// <summary>A page of a workshop's history, the newest first.</summary>
internal sealed record HistoryPage
{
    /// <summary>The workshop's version.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>The changes.</summary>
    public required ValueList<HistoryItem> Items { get; init; }

    /// <summary>Where there are more: what to give as "before" for the next page.</summary>
    [Range(1, Versions.Most)]
    public long? Next { get; init; }
}

/// <summary>A change in the history.</summary>
internal sealed record HistoryItem
{
    /// <summary>The workshop's version after it.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>When it was made.</summary>
    public required Instant At { get; init; }

    /// <summary>Who made it.</summary>
    [StringLength(200)]
    public required string Who { get; init; }

    /// <summary>How it came about.</summary>
    public required Act Act { get; init; }

    /// <summary>The version of the change that was undone or redone.</summary>
    [Range(1, Versions.Most)]
    public long? Of { get; init; }

    /// <summary>What it did, in words.</summary>
    [StringLength(2_000)]
    public required string Says { get; init; }

    /// <summary>Whether it was taken back since and not made again.</summary>
    public bool Undone { get; init; }

    /// <summary>A line of the store.</summary>
    public static HistoryItem From(HistoryLine line) => new()
    {
        Version = line.Version,
        At = line.At,
        Who = line.Who,
        Act = line.Act,
        Of = line.Of,
        Says = line.Says,
        Undone = line.IsUndone,
    };
}

/// <summary>A change as it is kept for ever.</summary>
internal sealed record KeptChange
{
    /// <summary>Its line of the history.</summary>
    public required HistoryItem Line { get; init; }

    /// <summary>The change, as it was asked for.</summary>
    public required Change After { get; init; }

    /// <summary>The change that leads back.</summary>
    public required Change Before { get; init; }
}
