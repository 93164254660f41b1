using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>
/// A transaction that reads one state of the file. Begun as "deferred": unlike those that write, it takes no lock.
/// </summary>
internal sealed class DeferredReading : IAsyncDisposable
{
    private readonly PlannerContext context;
    private readonly SqliteTransaction transaction;

    private DeferredReading(PlannerContext context, SqliteTransaction transaction) =>
        (this.context, this.transaction) = (context, transaction);

    /// <summary>Begins it on the context's connection.</summary>
    public static async Task<DeferredReading> Begin(PlannerContext context, CancellationToken stop)
    {
        await context.Database.OpenConnectionAsync(stop);
        var connection = (SqliteConnection)context.Database.GetDbConnection();
        var transaction = connection.BeginTransaction(deferred: true);
        await context.Database.UseTransactionAsync(transaction, stop);
        return new DeferredReading(context, transaction);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await context.Database.UseTransactionAsync(null);
        await transaction.DisposeAsync();
        await context.Database.CloseConnectionAsync();
    }
}
