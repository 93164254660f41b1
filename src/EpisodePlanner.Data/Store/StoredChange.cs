using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>A line of a workshop's history.</summary>
/// <param name="Version">The version that the workshop had after it.</param>
/// <param name="At">When it was made.</param>
/// <param name="Who">Who made it.</param>
/// <param name="Act">How it came about.</param>
/// <param name="Of">The version of the change that was undone or redone.</param>
/// <param name="Says">What it did, in words.</param>
/// <param name="IsUndone">Whether it was taken back since and not made again.</param>
public sealed record HistoryLine(long Version, Instant At, string Who, Act Act, long? Of, string Says, bool IsUndone);

/// <summary>A change as it is kept for ever.</summary>
/// <param name="Line">Its line of the history.</param>
/// <param name="After">What was changed, as it was asked for.</param>
/// <param name="Before">The change that leads back.</param>
public sealed record StoredChange(HistoryLine Line, Change After, Change Before);

/// <summary>A thing that was deleted and can be brought back.</summary>
/// <param name="What">The thing.</param>
/// <param name="Name">What it was called.</param>
/// <param name="Version">The version at which it was deleted.</param>
/// <param name="At">When it was deleted.</param>
/// <param name="KeptUntil">Until when it can be brought back.</param>
public sealed record DeletedThing(Aggregate What, string Name, long Version, Instant At, Instant KeptUntil);

/// <summary>A workshop in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="ChangedAt">When it was changed last.</param>
/// <param name="DeletedAt">When it was deleted; null where it is there.</param>
public sealed record WorkshopLine(Id Id, string Name, long Version, Instant ChangedAt, Instant? DeletedAt);

/// <summary>What a search for a workshop came to; one of the two is present, or neither where nobody knows it.</summary>
/// <param name="Found">The workshop.</param>
/// <param name="DeletedAt">When it was deleted, where it can be brought back.</param>
public sealed record Lookup(Snapshot? Found, Instant? DeletedAt);
