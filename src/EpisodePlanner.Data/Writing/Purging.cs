using EpisodePlanner.Data.Rows;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Forgets for good.</summary>
internal static class Purging
{
    /// <summary>Removes what was deleted at or before a moment, and keys used at or before another.</summary>
    /// <returns>How many rows went.</returns>
    public static async Task<int> Purge(PlannerContext context, Instant deleted, Instant used, CancellationToken stop)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(stop);
        var gone = context.Workshops.Where(row => row.DeletedAt <= deleted).Select(row => row.Id);
        var rows = await Aggregates<ThingRow>(context, gone, deleted, stop)
            + await Aggregates<LogRow>(context, gone, deleted, stop)
            + await Aggregates<UploadRow>(context, gone, deleted, stop)
            + await Aggregates<ToldDateRow>(context, gone, deleted, stop)
            + await context.Changes.Where(row => gone.Contains(row.Workshop)).ExecuteDeleteAsync(stop)
            + await context.Supposes.Where(row => gone.Contains(row.Workshop)).ExecuteDeleteAsync(stop)
            + await context.RequestKeys.Where(row => row.At <= used || gone.Contains(row.Workshop)).ExecuteDeleteAsync(stop)
            + await context.Workshops.Where(row => row.DeletedAt <= deleted).ExecuteDeleteAsync(stop);
        await transaction.CommitAsync(CancellationToken.None);
        return rows;
    }

    private static Task<int> Aggregates<T>(
        PlannerContext context, IQueryable<string> gone, Instant deleted, CancellationToken stop)
        where T : AggregateRow => context.Set<T>()
            .Where(row => row.DeletedAt <= deleted || gone.Contains(row.Workshop))
            .ExecuteDeleteAsync(stop);
}
