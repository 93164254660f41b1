using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Reading;

/// <summary>What one tiny query tells about a workshop.</summary>
internal sealed record Head(long Version, Instant PlannedAt, Instant ChangedAt, Instant? DeletedAt);

/// <summary>
/// Reads workshops at their newest version: from memory where that is the newest, else by making the stored changes on
/// what is in memory, else from all rows.
/// </summary>
internal sealed class Snapshots(Storage storage)
{
    private const int MostThings = 200_000;
    private const int MostSteps = 256;

    private readonly SnapshotCache cache = new(MostThings);
    private readonly SnapshotLoader loader = new(storage);

    // Compiled once for the model of this storage: it is asked before every read and every write.
    private readonly Func<PlannerContext, string, CancellationToken, Task<Head?>> findHead = EF.CompileAsyncQuery(
        (PlannerContext context, string workshop, CancellationToken _) => context.Workshops
            .Where(row => row.Id == workshop)
            .Select(row => new Head(row.Version, row.PlannedAt, row.ChangedAt, row.DeletedAt))
            .SingleOrDefault());

    /// <summary>The workshop at its newest version.</summary>
    /// <exception cref="StorageTroubleException">A row is damaged.</exception>
    public async Task<Lookup> Newest(PlannerContext context, Id workshop, CancellationToken stop)
    {
        var head = await findHead(context, workshop.ToString(), stop);
        if (head is null or { DeletedAt: not null })
        {
            cache.Remove(workshop);
            return new Lookup(null, head?.DeletedAt);
        }

        var known = cache.Find(workshop);
        var newest = known is null ? null : await Reach(context, known, head, stop);
        newest ??= await loader.Load(context, workshop, stop);
        if (newest is null)
        {
            // It was deleted just now.
            return await Newest(context, workshop, stop);
        }

        return new Lookup(Keep(newest, newest.Snapshot.Version == head.Version ? head.PlannedAt : newest.Snapshot.PlannedAt), null);
    }

    /// <summary>Whether a workshop is there.</summary>
    public async Task<bool> Exists(PlannerContext context, Id workshop, CancellationToken stop) =>
        await findHead(context, workshop.ToString(), stop) is { DeletedAt: null };

    /// <summary>Keeps what was written.</summary>
    public void Keep(Snapshot snapshot, Instant changedAt) => cache.Put(new DatedSnapshot(snapshot, changedAt));

    private Snapshot Keep(DatedSnapshot dated, Instant plannedAt)
    {
        var snapshot = dated.Snapshot.PlannedFrom(plannedAt);
        cache.Put(dated with { Snapshot = snapshot });
        return snapshot;
    }

    /// <summary>The newest snapshot by way of one that is known; null where there is no way.</summary>
    private static async Task<DatedSnapshot?> Reach(
        PlannerContext context, DatedSnapshot known, Head head, CancellationToken stop)
    {
        var steps = head.Version - known.Snapshot.Version;
        if (steps == 0 && head.ChangedAt == known.ChangedAt)
        {
            return known;
        }

        return steps is > 0 and <= MostSteps ? await Follow(context, known, head.Version, stop) : null;
    }

    private static async Task<DatedSnapshot?> Follow(
        PlannerContext context, DatedSnapshot known, long to, CancellationToken stop)
    {
        var (workshop, from) = (known.Snapshot.Id.ToString(), known.Snapshot.Version);
        var rows = await context.Changes.AsNoTracking()
            .Where(row => row.Workshop == workshop && row.Version >= from && row.Version <= to)
            .OrderBy(row => row.Version)
            .ToListAsync(stop);

        // Another history, such as that of a copy brought back, leads elsewhere.
        if (rows.Count != to - from + 1 || rows[0].At != known.ChangedAt)
        {
            return null;
        }

        DatedSnapshot? reached = known;
        foreach (var row in rows.Skip(1))
        {
            reached = reached is null ? null : Step(reached.Snapshot, row);
        }

        return reached;
    }

    private static DatedSnapshot? Step(Snapshot before, ChangeRow row)
    {
        var change = row.ReadAfter();
        if (Changes.Replay(before.Workshop, change) is not { } after)
        {
            return null;
        }

        var changed = Aggregates.Changed(before.Workshop, after, change.Touches());
        return new DatedSnapshot(before.Next(after, changed, row.At), row.At);
    }
}
