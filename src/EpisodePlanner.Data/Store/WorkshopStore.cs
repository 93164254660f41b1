using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>
/// Keeps workshops: every change with its history, in one transaction with what it changes. All members may be called
/// at once from many threads; writers of one workshop follow each other, also over several processes.
/// </summary>
/// <remarks>Every member throws <see cref="StorageTroubleException"/> where the database can't do its work.</remarks>
public sealed class WorkshopStore
{
    /// <summary>How long what was deleted can be brought back.</summary>
    public static Duration DeletedKept { get; } = Duration.FromDays(30);

    /// <summary>The workshops that are there, by name and id.</summary>
    public Task<ValueList<WorkshopLine>> List(CancellationToken stop) => throw new NotImplementedException();

    /// <summary>The workshops that were deleted and can be brought back, the latest first.</summary>
    public Task<ValueList<WorkshopLine>> ListDeleted(CancellationToken stop) => throw new NotImplementedException();

    /// <summary>A workshop at its newest version.</summary>
    public Task<Lookup> Find(Id workshop, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Makes a workshop of a sound <see cref="Workshop"/>; its id is new.</summary>
    /// <returns><see cref="Made"/>, <see cref="Broken"/> where the workshop is not sound, or <see cref="KeyReused"/>.</returns>
    public Task<EditOutcome> Create(Workshop workshop, string who, RequestKey? key, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>Makes a change and keeps it, or says why not.</summary>
    public Task<EditOutcome> Make(Id workshop, Edit edit, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Takes back a change: that of a version, or the newest that somebody made and that is in force.</summary>
    /// <returns>
    /// <see cref="Stale"/> also where something the change touched was changed since; its things are named.
    /// </returns>
    public Task<EditOutcome> Undo(Id workshop, long? version, string who, Expectation expects, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>Makes the change again that was taken back last, unless another was made since.</summary>
    public Task<EditOutcome> Redo(Id workshop, string who, Expectation expects, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>The history, the newest first.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="before">Only what is older than this version; all where null.</param>
    /// <param name="most">At most so many lines.</param>
    /// <param name="stop">Stops the reading.</param>
    /// <returns>Null where there is no such workshop.</returns>
    public Task<ValueList<HistoryLine>?> History(Id workshop, long? before, int most, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>The change that led to a version, or null.</summary>
    public Task<StoredChange?> FindChange(Id workshop, long version, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>What was deleted in a workshop and can be brought back, the latest first; null where there is no such workshop.</summary>
    public Task<ValueList<DeletedThing>?> Deleted(Id workshop, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Brings a deleted thing back as it was.</summary>
    public Task<EditOutcome> Restore(Id workshop, Aggregate what, string who, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>Deletes a workshop; it can be brought back for <see cref="DeletedKept"/>.</summary>
    public Task<EditOutcome> Delete(Id workshop, string who, Expectation expects, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>Brings a deleted workshop back.</summary>
    public Task<EditOutcome> Restore(Id workshop, string who, CancellationToken stop) => throw new NotImplementedException();

    /// <summary>Moves the moment of planning on, where the workshop still has this version and the moment is later.</summary>
    /// <returns>The workshop as it is now; null where there is none.</returns>
    public Task<Snapshot?> MovePlannedAt(Id workshop, long version, Instant to, CancellationToken stop) =>
        throw new NotImplementedException();

    /// <summary>Forgets what was deleted longer than <see cref="DeletedKept"/> ago, and keys of requests older than a day.</summary>
    /// <returns>How many rows went.</returns>
    public Task<int> Purge(CancellationToken stop) => throw new NotImplementedException();
}
