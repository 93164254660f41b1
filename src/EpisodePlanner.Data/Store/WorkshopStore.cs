using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Writing;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>
/// Keeps workshops: every change with its history, in one transaction with what it changes. All members may be called
/// at once from many threads; writers of one workshop follow each other, also over several processes.
/// </summary>
/// <remarks>Every member throws <see cref="StorageTroubleException"/> where the database can't do its work.</remarks>
public sealed class WorkshopStore
{
    private readonly WorkshopLife life;

    /// <summary>A store over a database.</summary>
    /// <param name="storage">The database; one store serves it in a process.</param>
    /// <param name="ids">The ids of workshops to come.</param>
    /// <param name="clock">The clock.</param>
    public WorkshopStore(Storage storage, IdSource ids, TimeProvider clock)
    {
        (Storage, Ids, Clock) = (storage, ids, clock);
        Snapshots = new Snapshots(storage);
        Writer = new Writer(storage, Snapshots, clock);
        life = new WorkshopLife(this);
    }

    /// <summary>How long what was deleted can be brought back.</summary>
    public static Duration DeletedKept { get; } = Duration.FromDays(30);

    internal Storage Storage { get; }

    internal IdSource Ids { get; }

    internal TimeProvider Clock { get; }

    internal Snapshots Snapshots { get; }

    internal Writer Writer { get; }

    /// <summary>What was deleted after this moment can still be brought back.</summary>
    internal Instant KeptSince => Clock.Now() - DeletedKept;

    /// <summary>The workshops that are there, by name and id.</summary>
    public Task<ValueList<WorkshopLine>> List(CancellationToken stop) => life.List(stop);

    /// <summary>The workshops that were deleted and can be brought back, the latest first.</summary>
    public Task<ValueList<WorkshopLine>> ListDeleted(CancellationToken stop) => life.ListDeleted(stop);

    /// <summary>A workshop at its newest version.</summary>
    public async Task<Lookup> Find(Id workshop, CancellationToken stop)
    {
        var found = await Storage.Use(context => Snapshots.Newest(context, workshop, stop), stop);
        return found.DeletedAt <= KeptSince ? found with { DeletedAt = null } : found;
    }

    /// <summary>Makes a workshop of a sound <see cref="Workshop"/>; its id is new.</summary>
    /// <returns>
    /// <see cref="Made"/>, <see cref="Broken"/> (with what was to be made, at version 0) where the workshop is not sound,
    /// or <see cref="KeyReused"/>.
    /// </returns>
    public Task<EditOutcome> Create(Workshop workshop, string who, RequestKey? key, CancellationToken stop) =>
        new Creation(this).Create(workshop, who, key, stop);

    /// <summary>Makes a change and keeps it, or says why not.</summary>
    /// <exception cref="ArgumentException">The edit's act is one that only the store itself does.</exception>
    public Task<EditOutcome> Make(Id workshop, Edit edit, CancellationToken stop)
    {
        if (edit.Act is not (Act.Change or Act.Import))
        {
            throw new ArgumentException($"An edit is a change or an import, not '{edit.Act}'.", nameof(edit));
        }

        var intent = new Intent(edit.Change, edit.Who, edit.Act) { Expects = edit.Expects };
        return Writer.Run(workshop, edit.Key, (_, _, _) => Task.FromResult<Decision>(intent), stop);
    }

    /// <summary>Takes back a change: that of a version, or the newest that somebody made and that is in force.</summary>
    /// <returns>
    /// <see cref="Stale"/> also where something the change touched is no longer as it left it; its things are named.
    /// </returns>
    public Task<EditOutcome> Undo(Id workshop, long? version, string who, Expectation expects, CancellationToken stop) =>
        Writer.Run(
            workshop, null, (context, now, stop) => new Undoing(context, now, stop).Undo(version, who, expects), stop);

    /// <summary>Makes the change again that was taken back last, unless another was made since.</summary>
    public Task<EditOutcome> Redo(Id workshop, string who, Expectation expects, CancellationToken stop) =>
        Writer.Run(workshop, null, (context, now, stop) => new Undoing(context, now, stop).Redo(who, expects), stop);

    /// <summary>The history, the newest first.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="before">Only what is older than this version; all where null.</param>
    /// <param name="most">At most so many lines.</param>
    /// <param name="stop">Stops the reading.</param>
    /// <returns>Null where there is no such workshop.</returns>
    public Task<ValueList<HistoryLine>?> History(Id workshop, long? before, int most, CancellationToken stop) => Storage.Use(
        async context =>
        {
            var lines = await Reading.History.Of(context, workshop)
                .Where(row => before == null || row.Version < before)
                .OrderByDescending(row => row.Version)
                .Take(most)
                .Select(Reading.History.Line)
                .ToListAsync(stop);
            return await Snapshots.Exists(context, workshop, stop) ? lines.ToValueList() : null;
        },
        stop);

    /// <summary>The change that led to a version, or null.</summary>
    public Task<StoredChange?> FindChange(Id workshop, long version, CancellationToken stop) => Storage.Use(
        async context =>
        {
            var row = await Reading.History.Of(context, workshop).At(version, stop);
            return row is not null && await Snapshots.Exists(context, workshop, stop) ? row.ToStored() : null;
        },
        stop);

    /// <summary>What was deleted in a workshop and can be brought back, the latest first; null where there is no such workshop.</summary>
    public Task<ValueList<DeletedThing>?> Deleted(Id workshop, CancellationToken stop) => Storage.Use(
        async context => await Snapshots.Exists(context, workshop, stop)
            ? await Restoring.List(context, workshop, KeptSince, stop)
            : null,
        stop);

    /// <summary>Brings a deleted thing back as it was.</summary>
    public Task<EditOutcome> Restore(Id workshop, Aggregate what, string who, CancellationToken stop) => Writer.Run(
        workshop, null, (context, now, stop) => Restoring.Decide(context, now, what, who, KeptSince, stop), stop);

    /// <summary>Deletes a workshop; it can be brought back for <see cref="DeletedKept"/>.</summary>
    public Task<EditOutcome> Delete(Id workshop, string who, Expectation expects, CancellationToken stop) =>
        life.Delete(workshop, who, expects, stop);

    /// <summary>Brings a deleted workshop back.</summary>
    public Task<EditOutcome> Restore(Id workshop, string who, CancellationToken stop) => life.Restore(workshop, who, stop);

    /// <summary>Moves the moment of planning on, where the workshop still has this version and the moment is later.</summary>
    /// <returns>The workshop as it is now; null where there is none.</returns>
    public async Task<Snapshot?> MovePlannedAt(Id workshop, long version, Instant to, CancellationToken stop)
    {
        using var turn = await Writer.Enter(workshop.ToString(), stop);
        return await Storage.Use(context => life.MovePlannedAt(context, workshop, version, Moments.Minute(to), stop), stop);
    }

    /// <summary>Forgets what was deleted longer than <see cref="DeletedKept"/> ago, and keys of requests older than a day.</summary>
    /// <returns>How many rows went.</returns>
    public async Task<int> Purge(CancellationToken stop)
    {
        using var turn = await Writer.Enter("", stop);
        return await Storage.Use(context => Purging.Purge(context, KeptSince, Clock.Now() - RequestKeys.Kept, stop), stop);
    }
}
