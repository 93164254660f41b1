using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>What became of an <see cref="Edit"/>, an undo, a redo or a restoration.</summary>
public abstract record EditOutcome
{
    private protected EditOutcome()
    {
    }
}

/// <summary>The change was made and is kept.</summary>
/// <param name="Now">The workshop after it, or after others that followed, where the request was a repetition.</param>
/// <param name="Change">The change as it was stored.</param>
/// <param name="IsRepetition">Whether it was made by an earlier request with the same key.</param>
public sealed record Made(Snapshot Now, StoredChange Change, bool IsRepetition) : EditOutcome;

/// <summary>The change would change nothing, so nothing was stored.</summary>
/// <param name="Now">The workshop as it is.</param>
public sealed record Unchanged(Snapshot Now) : EditOutcome;

/// <summary>The change breaks rules.</summary>
/// <param name="Now">The workshop as it is.</param>
/// <param name="Reasons">Everything that speaks against it; at least one.</param>
public sealed record Broken(Snapshot Now, ValueList<Reason> Reasons) : EditOutcome;

/// <summary>What was expected is not so: somebody else was quicker.</summary>
/// <param name="Now">The workshop as it is.</param>
/// <param name="Things">What has another version than was expected; empty where the workshop as a whole has.</param>
public sealed record Stale(Snapshot Now, ValueList<StaleThing> Things) : EditOutcome;

/// <summary>An aggregate with another version than was expected.</summary>
/// <param name="What">The aggregate.</param>
/// <param name="Version">Its version now; null where it does not exist.</param>
/// <param name="DeletedAt">When it was deleted, where it was.</param>
public sealed record StaleThing(Aggregate What, long? Version, Instant? DeletedAt);

/// <summary>There is no such workshop, or it was deleted.</summary>
/// <param name="DeletedAt">When it was deleted; null where it never was, or is forgotten.</param>
public sealed record NoWorkshop(Instant? DeletedAt) : EditOutcome;

/// <summary>The key was used for another request before.</summary>
public sealed record KeyReused : EditOutcome;

/// <summary>There is nothing of the kind to undo, redo or restore.</summary>
/// <param name="Says">A sentence for people.</param>
public sealed record NothingThere(string Says) : EditOutcome;
