using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Makes workshops.</summary>
internal sealed class Creation(WorkshopStore store)
{
    private const int FirstVersion = 1;

    /// <summary>Makes a workshop, or says why not.</summary>
    public async Task<EditOutcome> Create(Workshop workshop, string who, RequestKey? key, CancellationToken stop)
    {
        var ordered = WorkshopFile.Order(workshop);
        var (id, at) = (store.Ids.Next(), store.Clock.Now());
        var reasons = WorkshopRules.Check(ordered);
        if (reasons.Count > 0)
        {
            return new Broken(SnapshotAt(0, id, ordered, at), reasons);
        }

        using var turn = await store.Writer.Enter(RequestKeys.NewWorkshops, stop);
        return await store.Storage.Use(
            async context => await Repeated(context, key, stop)
                ?? await Write(context, SnapshotAt(FirstVersion, id, ordered, at), who, key, at, stop)
                ?? await Repeated(context, key, stop)
                ?? throw new InvalidOperationException("The workshop could be written neither anew nor before."),
            stop);
    }

    private static Snapshot SnapshotAt(long version, Id id, Workshop workshop, Instant at)
    {
        var versions = Aggregates.All(workshop).Select(what => KeyValuePair.Create(what, version));
        return new Snapshot(id, workshop, version, Moments.Minute(at), [.. versions]);
    }

    /// <summary>What became of an earlier request with this key; null where there was none.</summary>
    private async Task<EditOutcome?> Repeated(PlannerContext context, RequestKey? key, CancellationToken stop)
    {
        if (await RequestKeys.Find(context, RequestKeys.NewWorkshops, key, stop) is not { } earlier)
        {
            return null;
        }

        if (earlier.Fingerprint != key!.Fingerprint)
        {
            return new KeyReused();
        }

        var id = new Id(earlier.Workshop);
        var (now, deletedAt) = await store.Snapshots.Newest(context, id, stop);
        var row = await History.Of(context, id).At(FirstVersion, stop);
        return now is null || row is null ? new NoWorkshop(deletedAt) : new Made(now, row.ToStored(), IsRepetition: true);
    }

    /// <summary>Null where another process has made it under the same key just now.</summary>
    private async Task<EditOutcome?> Write(
        PlannerContext context, Snapshot made, string who, RequestKey? key, Instant at, CancellationToken stop)
    {
        var change = Row(made, who, at);
        Note(context, made, who, at);
        context.Changes.Add(change);
        if (key is not null)
        {
            context.RequestKeys.Add(key.Row(RequestKeys.NewWorkshops, at, change.Workshop, FirstVersion));
        }

        try
        {
            await context.SaveChangesAsync(stop);
        }
        catch (DbUpdateException) when (key is not null)
        {
            context.ChangeTracker.Clear();
            if (await RequestKeys.Find(context, RequestKeys.NewWorkshops, key, stop) is null)
            {
                throw;
            }

            return null;
        }

        store.Snapshots.Keep(made, at);
        return new Made(made, change.ToStored(), IsRepetition: false);
    }

    private static void Note(PlannerContext context, Snapshot made, string who, Instant at)
    {
        context.Workshops.Add(new WorkshopRow
        {
            Id = made.Id.ToString(),
            Owner = who,
            Version = made.Version,
            Name = made.Workshop.Name,
            PlannedAt = made.PlannedAt,
            CreatedAt = at,
            ChangedAt = at,
        });
        var rows = new RowWriter(context, made.Id, made.Version, at, who);
        foreach (var what in Aggregates.All(made.Workshop))
        {
            rows.Put(what, Aggregates.Find(made.Workshop, what)!, isThere: false);
        }
    }

    private static ChangeRow Row(Snapshot made, string who, Instant at)
    {
        // The history begins with all there is, from a workshop without anything.
        var nothing = new Workshop { Format = made.Workshop.Format, Name = made.Workshop.Name, Zone = made.Workshop.Zone };
        var all = Differences.Between(nothing, made.Workshop) ?? new Batch([]);
        return new ChangeRow
        {
            Workshop = made.Id.ToString(),
            Version = made.Version,
            At = at,
            Who = who,
            Act = Act.Begin,
            Says = "Made the workshop",
            After = Bodies.Write(all),
            Before = Bodies.Write(new Batch([])),
        };
    }
}
