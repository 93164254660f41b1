using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Reading;

/// <summary>A table of aggregates, whatever its columns.</summary>
internal abstract class Table
{
    /// <summary>The rows of a workshop that were not deleted.</summary>
    public abstract Task<IReadOnlyList<AggregateRow>> Living(PlannerContext context, string workshop, CancellationToken stop);

    /// <summary>The rows of a workshop that were deleted and not forgotten.</summary>
    public abstract Task<IReadOnlyList<AggregateRow>> Deleted(PlannerContext context, string workshop, CancellationToken stop);

    /// <summary>An empty row for an aggregate.</summary>
    public abstract AggregateRow Row(string workshop, Aggregate what, string owner);
}

/// <summary>A table of aggregates.</summary>
/// <param name="name">Its name in the database.</param>
/// <param name="row">Makes an empty row.</param>
/// <param name="living">Leaves out the columns that a living row is not asked for.</param>
internal sealed class Table<T>(
    string name, Func<string, Aggregate, string, T> row, Func<IQueryable<T>, IQueryable<T>>? living = null) : Table
    where T : AggregateRow
{
    public override Task<IReadOnlyList<AggregateRow>> Living(
        PlannerContext context, string workshop, CancellationToken stop) =>
        Read(Slim(context.Set<T>().Where(row => row.Workshop == workshop && row.DeletedAt == null)), workshop, stop);

    public override Task<IReadOnlyList<AggregateRow>> Deleted(
        PlannerContext context, string workshop, CancellationToken stop) =>
        Read(context.Set<T>().Where(row => row.Workshop == workshop && row.DeletedAt != null), workshop, stop);

    public override AggregateRow Row(string workshop, Aggregate what, string owner) => row(workshop, what, owner);

    private IQueryable<T> Slim(IQueryable<T> rows) => living is null ? rows : living(rows);

    private async Task<IReadOnlyList<AggregateRow>> Read(IQueryable<T> rows, string workshop, CancellationToken stop)
    {
        try
        {
            return await rows.AsNoTracking().ToListAsync(stop);
        }
        catch (Exception damaged) when (damaged is FormatException or InvalidCastException or InvalidOperationException)
        {
            throw StorageTroubleException.Damaged(
                $"(one of table '{name}', workshop {workshop})", [new Reason("$", damaged.Message)]);
        }
    }
}

/// <summary>The tables of aggregates.</summary>
internal static class Tables
{
    private static readonly Table Things = new Table<ThingRow>("things", (workshop, what, owner) => new ThingRow
    {
        Workshop = workshop,
        Kind = what.Kind,
        Id = what.Id.ToString(),
        Owner = owner,
    }, rows => rows.Select(row => new ThingRow
    {
        Workshop = row.Workshop,
        Kind = row.Kind,
        Id = row.Id,
        Owner = "",
        Version = row.Version,
        Body = row.Body,
    }));

    private static readonly Table Log = new Table<LogRow>("log", (workshop, what, owner) => new LogRow
    {
        Workshop = workshop,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    private static readonly Table Uploads = new Table<UploadRow>("uploads", (workshop, what, owner) => new UploadRow
    {
        Workshop = workshop,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    private static readonly Table ToldDates = new Table<ToldDateRow>("told_dates", (workshop, what, owner) => new ToldDateRow
    {
        Workshop = workshop,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Table> All { get; } = [Things, Log, Uploads, ToldDates];

    /// <summary>The table that holds aggregates of a kind.</summary>
    public static Table Of(string kind) =>
        kind == ThingKinds.Log.Name ? Log
        : kind == ThingKinds.Uploads.Name ? Uploads
        : kind == ThingKinds.ToldDates.Name ? ToldDates
        : Things;
}
