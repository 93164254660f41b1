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
internal sealed class Table<T>(Func<string, Aggregate, string, T> row) : Table
    where T : AggregateRow
{
    public override async Task<IReadOnlyList<AggregateRow>> Living(
        PlannerContext context, string workshop, CancellationToken stop) =>
        await context.Set<T>().AsNoTracking()
            .Where(row => row.Workshop == workshop && row.DeletedAt == null)
            .ToListAsync(stop);

    public override async Task<IReadOnlyList<AggregateRow>> Deleted(
        PlannerContext context, string workshop, CancellationToken stop) =>
        await context.Set<T>().AsNoTracking()
            .Where(row => row.Workshop == workshop && row.DeletedAt != null)
            .ToListAsync(stop);

    public override AggregateRow Row(string workshop, Aggregate what, string owner) => row(workshop, what, owner);
}

/// <summary>The tables of aggregates.</summary>
internal static class Tables
{
    private static readonly Table Things = new Table<ThingRow>((workshop, what, owner) => new ThingRow
    {
        Workshop = workshop,
        Kind = what.Kind,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    private static readonly Table Log = new Table<LogRow>((workshop, what, owner) => new LogRow
    {
        Workshop = workshop,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    private static readonly Table Uploads = new Table<UploadRow>((workshop, what, owner) => new UploadRow
    {
        Workshop = workshop,
        Id = what.Id.ToString(),
        Owner = owner,
    });

    private static readonly Table ToldDates = new Table<ToldDateRow>((workshop, what, owner) => new ToldDateRow
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
