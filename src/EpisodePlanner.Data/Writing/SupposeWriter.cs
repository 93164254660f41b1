using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Writing;

/// <summary>Writes drafts. Each has a version of its own; the workshop's is left alone.</summary>
internal sealed class SupposeWriter(WorkshopStore store)
{
    private const int MostAttempts = 20;

    /// <summary>Begins or replaces a draft.</summary>
    public Task<SupposeOutcome> Put(Id workshop, SupposeDraft draft, CancellationToken stop)
    {
        var id = draft.Id ?? store.Ids.Next();
        return Attempt(workshop, context => TryPut(context, workshop, id, draft, stop), stop);
    }

    /// <summary>Drops a draft.</summary>
    public Task<SupposeOutcome> Drop(Id workshop, Id suppose, ValueList<long> versions, CancellationToken stop) =>
        Attempt(workshop, context => TryDrop(context, workshop, suppose, versions, stop), stop);

    private async Task<SupposeOutcome> Attempt(
        Id workshop, Func<PlannerContext, Task<SupposeOutcome>> work, CancellationToken stop)
    {
        using var turn = await store.Writer.Enter(workshop.ToString(), stop);
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await store.Storage.Use(work, stop);
            }
            catch (DbUpdateException) when (attempt < MostAttempts)
            {
                // Another process was quicker with this draft or this key; what it did is looked at anew.
            }
        }
    }

    private async Task<SupposeOutcome> TryPut(
        PlannerContext context, Id workshop, Id id, SupposeDraft draft, CancellationToken stop)
    {
        var now = (await store.Snapshots.Newest(context, workshop, stop)).Found;
        if (now is null)
        {
            return SupposeOutcome.Missing;
        }

        if (await RequestKeys.Find(context, workshop.ToString(), draft.Key, stop) is { } earlier)
        {
            return await Repeat(context, workshop, earlier, draft.Key!, stop);
        }

        var known = await SupposeRows.Find(context, workshop, id, stop);
        if (known is null ? draft.Versions.Count > 0 : !Fits(draft.Versions, known.Version))
        {
            return known is null ? SupposeOutcome.Missing : SupposeOutcome.Stale(SupposeRows.Read(known));
        }

        var reasons = Objections(now, draft);
        return reasons.Count > 0
            ? SupposeOutcome.Refused(known is null ? null : SupposeRows.Read(known), reasons)
            : await Write(context, Row(now, id, known, draft), known, draft.Key, stop);
    }

    private async Task<SupposeOutcome> TryDrop(
        PlannerContext context, Id workshop, Id suppose, ValueList<long> versions, CancellationToken stop)
    {
        if (!await store.Snapshots.Exists(context, workshop, stop)
            || await SupposeRows.Find(context, workshop, suppose, stop) is not { } row)
        {
            return SupposeOutcome.Missing;
        }

        if (!Fits(versions, row.Version))
        {
            return SupposeOutcome.Stale(SupposeRows.Read(row));
        }

        context.Supposes.Remove(row);
        await context.SaveChangesAsync(stop);
        return SupposeOutcome.Done(null);
    }

    private static async Task<SupposeOutcome> Repeat(
        PlannerContext context, Id workshop, RequestKeyRow earlier, RequestKey key, CancellationToken stop)
    {
        if (earlier.Fingerprint != key.Fingerprint || earlier.Suppose is not { } id)
        {
            return SupposeOutcome.Reused;
        }

        var row = await SupposeRows.Find(context, workshop, new Id(id), stop);
        return row is null ? SupposeOutcome.Missing : SupposeOutcome.Done(SupposeRows.Read(row));
    }

    private static ValueList<Reason> Objections(Snapshot now, SupposeDraft draft) =>
        draft.Base < 1 || draft.Base > now.Version
            ? [new Reason("$.base", $"There is no version {draft.Base} of the workshop; it is at version {now.Version}.")]
            : (Changes.Apply(now.Workshop, draft.Changes) as Refused)?.Reasons ?? [];

    private SupposeRow Row(Snapshot now, Id id, SupposeRow? known, SupposeDraft draft) => new()
    {
        Workshop = now.Id.ToString(),
        Id = id.ToString(),
        Version = (known?.Version ?? 0) + 1,
        Name = draft.Name,
        Base = draft.Base ?? now.Version,
        Changes = Bodies.Write(Writer.Canonical(draft.Changes)),
        Who = draft.Who,
        At = store.Clock.Now(),
    };

    private static async Task<SupposeOutcome> Write(
        PlannerContext context, SupposeRow row, SupposeRow? known, RequestKey? key, CancellationToken stop)
    {
        var entry = context.Entry(row);
        entry.State = known is null ? EntityState.Added : EntityState.Modified;
        if (known is not null)
        {
            entry.Property(draft => draft.Version).OriginalValue = known.Version;
        }

        if (key is not null)
        {
            context.RequestKeys.Add(key.Row(row.Workshop, row.At, row.Workshop, version: null, suppose: row.Id));
        }

        await context.SaveChangesAsync(stop);
        return SupposeOutcome.Done(SupposeRows.Read(row));
    }

    private static bool Fits(ValueList<long> versions, long version) => versions.Count == 0 || versions.Contains(version);
}
