using System.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>A database of a PostgreSQL server.</summary>
public sealed class PostgreSqlStorage : Storage
{
    private readonly PooledDbContextFactory<PostgreSqlPlannerContext> contexts;

    /// <summary>The database that a connection string names; it is created where it is missing and the user may do so.</summary>
    public PostgreSqlStorage(string connectionString) => contexts = new(PostgreSqlOptions.For(connectionString));

    /// <inheritdoc/>
    public override bool HasOneWriter => false;

    /// <inheritdoc/>
    public override PlannerContext Open() => contexts.CreateDbContext();

    /// <inheritdoc/>
    protected override async Task<IAsyncDisposable> BeginReading(PlannerContext context, CancellationToken stop) =>
        await context.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, stop);

    /// <inheritdoc/>
    protected override StorageTroubleException? Explain(Exception exception) => PostgreSqlTroubles.Explain(exception);
}
