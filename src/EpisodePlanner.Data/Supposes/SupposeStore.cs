using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>Keeps the drafts of workshops.</summary>
/// <remarks>Every member throws <see cref="StorageTroubleException"/> where the database can't do its work.</remarks>
public sealed class SupposeStore
{
    /// <summary>The drafts of a store's workshops.</summary>
    public SupposeStore(WorkshopStore workshops) => _ = workshops;

    /// <summary>The drafts of a workshop, the newest first; null where there is no such workshop.</summary>
    public Task<ValueList<Suppose>?> List(Id workshop, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>A draft, or null.</summary>
    public Task<Suppose?> Find(Id workshop, Id suppose, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Begins a draft, or puts it in the place of the one with its id.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="draft">What is supposed.</param>
    /// <param name="stop">Stops the writing.</param>
    public Task<SupposeOutcome> Put(Id workshop, SupposeDraft draft, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Drops a draft that has one of these versions; any where the list is empty.</summary>
    public Task<SupposeOutcome> Drop(Id workshop, Id suppose, ValueList<long> versions, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>The draft replayed on the workshop as it is now; null where there is no such draft.</summary>
    public Task<Supposed?> Replay(Id workshop, Id suppose, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>
    /// Makes the draft's changes real, all or none, and drops it. <see cref="Stale"/> where something it touches was
    /// changed since its base; <see cref="Broken"/> where the changes no longer fit.
    /// </summary>
    public Task<EditOutcome> Keep(Id workshop, Id suppose, string who, CancellationToken stop) => throw new NotImplementedException();
}

/// <summary>What is to be supposed.</summary>
/// <param name="Id">The draft's id; null for a new one.</param>
/// <param name="Versions">The versions that will do of the draft that is replaced; any where the list is empty.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Base">The version of the workshop it was made from; null for the newest.</param>
/// <param name="Changes">The changes in order.</param>
/// <param name="Who">Who supposes.</param>
/// <param name="Key">Under which key a repetition of the request is known.</param>
public sealed record SupposeDraft(
    Id? Id, ValueList<long> Versions, string Name, long? Base, Batch Changes, string Who, RequestKey? Key);

/// <summary>What became of a draft.</summary>
/// <param name="Kept">The draft as it is now; null where it was dropped, or there is none.</param>
/// <param name="IsStale">Whether another version was expected.</param>
/// <param name="IsMissing">Whether there is no such draft or workshop.</param>
/// <param name="Reasons">What is wrong with the changes, tried on the workshop as it is.</param>
public sealed record SupposeOutcome(Suppose? Kept, bool IsStale, bool IsMissing, ValueList<Reason> Reasons);
