using System.Linq.Expressions;
using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Lists workshops, deletes them and brings them back.</summary>
internal sealed class WorkshopLife(WorkshopStore store)
{
    private static readonly Batch Nothing = new([]);

    private static readonly Expression<Func<WorkshopRow, WorkshopLine>> Line = row =>
        new WorkshopLine(new Id(row.Id), row.Name, row.Version, row.ChangedAt, row.DeletedAt);

    /// <summary>The workshops that are there, by name and id.</summary>
    public async Task<ValueList<WorkshopLine>> List(CancellationToken stop)
    {
        var lines = await store.Storage.Use(
            context => context.Workshops.Where(row => row.DeletedAt == null).Select(Line).ToListAsync(stop), stop);

        // Databases sort words in ways of their own.
        return lines.OrderBy(line => line.Name, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.Id).ToValueList();
    }

    /// <summary>The workshops that were deleted and can be brought back, the latest first.</summary>
    public async Task<ValueList<WorkshopLine>> ListDeleted(CancellationToken stop)
    {
        var since = store.KeptSince;
        var lines = await store.Storage.Use(
            context => context.Workshops.Where(row => row.DeletedAt > since).Select(Line).ToListAsync(stop), stop);
        return lines.OrderByDescending(line => line.DeletedAt).ThenBy(line => line.Id).ToValueList();
    }

    /// <summary>Deletes a workshop.</summary>
    public Task<EditOutcome> Delete(Id workshop, string who, Expectation expects, CancellationToken stop)
    {
        var intent = new Intent(Nothing, who, Act.Delete)
        {
            Expects = expects,
            Says = "Deleted the workshop",
            IsMadeAnyway = true,
            DeletesWorkshop = true,
        };
        return store.Writer.Run(workshop, null, (_, _, _) => Task.FromResult<Decision>(intent), stop);
    }

    /// <summary>Brings a deleted workshop back.</summary>
    public async Task<EditOutcome> Restore(Id workshop, string who, CancellationToken stop)
    {
        using var turn = await store.Writer.Enter(workshop.ToString(), stop);
        return await store.Storage.Use(context => Restore(context, workshop, who, stop), stop);
    }

    /// <summary>Moves the moment of planning on.</summary>
    public async Task<Snapshot?> MovePlannedAt(
        PlannerContext context, Id workshop, long version, Instant to, CancellationToken stop)
    {
        var now = (await store.Snapshots.Newest(context, workshop, stop)).Found;
        if (now is null || now.Version != version || now.PlannedAt >= to)
        {
            return now;
        }

        var key = workshop.ToString();
        await context.Workshops
            .Where(row => row.Id == key && row.Version == version && row.PlannedAt < to && row.DeletedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.PlannedAt, to), stop);
        return (await store.Snapshots.Newest(context, workshop, stop)).Found;
    }

    private async Task<EditOutcome> Restore(PlannerContext context, Id workshop, string who, CancellationToken stop)
    {
        var (key, at, since) = (workshop.ToString(), store.Clock.Now(), store.KeptSince);
        var head = await context.Workshops.AsNoTracking().SingleOrDefaultAsync(row => row.Id == key, stop);
        if (head is null || head.DeletedAt <= since)
        {
            return new NoWorkshop(null);
        }

        if (head.DeletedAt is null)
        {
            return new NothingThere("The workshop is there and needs not be brought back.");
        }

        await using var transaction = await context.Database.BeginTransactionAsync(stop);
        var row = Row(head, who, at);
        var raised = await context.Workshops
            .Where(other => other.Id == key && other.Version == head.Version)
            .ExecuteUpdateAsync(
                set => set
                    .SetProperty(other => other.Version, row.Version)
                    .SetProperty(other => other.PlannedAt, Moments.Minute(at))
                    .SetProperty(other => other.ChangedAt, at)
                    .SetProperty(other => other.DeletedAt, (Instant?)null),
                stop);
        if (raised == 1)
        {
            context.Changes.Add(row);
            await context.SaveChangesAsync(stop);
            await transaction.CommitAsync(CancellationToken.None);
        }

        var (now, deletedAt) = await store.Snapshots.Newest(context, workshop, stop);
        return now is null ? new NoWorkshop(deletedAt)
            : raised == 1 ? new Made(now, row.ToStored(), IsRepetition: false)
            : new NothingThere("The workshop was brought back just now.");
    }

    private static ChangeRow Row(WorkshopRow head, string who, Instant at) => new()
    {
        Workshop = head.Id,
        Version = head.Version + 1,
        At = at,
        Who = who,
        Act = Act.Restore,
        Of = head.Version,
        Says = "Brought the workshop back",
        After = Bodies.Write(Nothing),
        Before = Bodies.Write(Nothing),
    };
}
