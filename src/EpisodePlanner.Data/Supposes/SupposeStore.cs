using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Writing;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data;

/// <summary>Keeps the drafts of workshops.</summary>
/// <remarks>Every member throws <see cref="StorageTroubleException"/> where the database can't do its work.</remarks>
public sealed class SupposeStore
{
    private readonly WorkshopStore store;
    private readonly SupposeWriter writer;

    /// <summary>The drafts of a store's workshops.</summary>
    public SupposeStore(WorkshopStore workshops)
    {
        store = workshops;
        writer = new SupposeWriter(workshops);
    }

    /// <summary>The drafts of a workshop, the newest first; null where there is no such workshop.</summary>
    public Task<ValueList<Suppose>?> List(Id workshop, CancellationToken stop) => store.Storage.Use(
        async context =>
        {
            var rows = await SupposeRows.Of(context, workshop).ToListAsync(stop);
            return await store.Snapshots.Exists(context, workshop, stop)
                ? rows.OrderByDescending(row => row.At).ThenBy(row => row.Id, StringComparer.Ordinal)
                    .Select(SupposeRows.Read).ToValueList()
                : null;
        },
        stop);

    /// <summary>A draft, or null.</summary>
    public Task<Suppose?> Find(Id workshop, Id suppose, CancellationToken stop) => store.Storage.Use(
        async context => await store.Snapshots.Exists(context, workshop, stop)
            && await SupposeRows.Find(context, workshop, suppose, stop) is { } row
            ? SupposeRows.Read(row)
            : null,
        stop);

    /// <summary>Begins a draft, or puts it in the place of the one with its id.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="draft">What is supposed.</param>
    /// <param name="stop">Stops the writing.</param>
    public Task<SupposeOutcome> Put(Id workshop, SupposeDraft draft, CancellationToken stop) =>
        writer.Put(workshop, draft, stop);

    /// <summary>Drops a draft that has one of these versions; any where the list is empty.</summary>
    public Task<SupposeOutcome> Drop(Id workshop, Id suppose, ValueList<long> versions, CancellationToken stop) =>
        writer.Drop(workshop, suppose, versions, stop);

    /// <summary>The draft replayed on the workshop as it is now; null where there is no such draft.</summary>
    public Task<Supposed?> Replay(Id workshop, Id suppose, CancellationToken stop) => store.Storage.Use(
        async context =>
        {
            var now = (await store.Snapshots.Newest(context, workshop, stop)).Found;
            var row = now is null ? null : await SupposeRows.Find(context, workshop, suppose, stop);
            return row is null ? null : await Replay(context, now!, SupposeRows.Read(row), stop);
        },
        stop);

    /// <summary>
    /// Makes the draft's changes real, all or none, and drops it. <see cref="Stale"/> where something it touches was
    /// changed since its base; <see cref="Broken"/> where the changes no longer fit.
    /// </summary>
    public async Task<EditOutcome> Keep(Id workshop, Id suppose, string who, CancellationToken stop)
    {
        var outcome = await store.Writer.Run(
            workshop, null, (context, now, stop) => Keeping(context, now, suppose, who, stop), stop);
        if (outcome is Unchanged)
        {
            // All that it supposed is so already.
            await Drop(workshop, suppose, [], stop);
        }

        return outcome;
    }

    private static async Task<Decision> Keeping(
        PlannerContext context, Snapshot now, Id suppose, string who, CancellationToken stop)
    {
        if (await SupposeRows.Find(context, now.Id, suppose, stop) is not { } row)
        {
            return new NothingThere($"There is no draft '{suppose}' to keep.");
        }

        var draft = SupposeRows.Read(row);
        return new Intent(draft.Changes, who, Act.Keep)
        {
            Expects = new Expectation.UntouchedSince(draft.Base),
            Says = $"Kept draft \u201c{draft.Name}\u201d: {History.Inside(ChangeWords.Say(draft.Changes, now.Workshop))}",
            Also = (context, _) =>
            {
                // Under the version that was read: a draft that was changed meanwhile is looked at again.
                context.Supposes.Remove(row);
                return Task.CompletedTask;
            },
        };
    }

    private static async Task<Supposed> Replay(
        PlannerContext context, Snapshot now, Suppose draft, CancellationToken stop)
    {
        var result = Changes.Apply(now.Workshop, draft.Changes);
        var deleted = await Tombstones.Of(
            context, now.Id, draft.Changes.Touches().Where(what => now.VersionOf(what) is null), stop);
        var since = new Expectation.UntouchedSince(draft.Base);
        return new Supposed(
            draft,
            now,
            (result as Applied)?.Workshop,
            (result as Refused)?.Reasons ?? [],
            Expecting.Check(since, draft.Changes, now, deleted)?.Things ?? []);
    }
}
