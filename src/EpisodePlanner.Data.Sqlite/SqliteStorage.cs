using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>One file in a data folder: the embedded default.</summary>
/// <remarks>
/// Readers don't hold up the writer, nor it them (write-ahead log); what was acknowledged has reached the disk.
/// </remarks>
public sealed class SqliteStorage : Storage
{
    private readonly string file;
    private readonly PooledDbContextFactory<SqlitePlannerContext> contexts;

    /// <summary>The database in a file.</summary>
    /// <param name="file">The file; it is created with its folder where it is missing.</param>
    public SqliteStorage(string file)
    {
        this.file = Path.GetFullPath(file);
        contexts = new(SqliteOptions.For(this.file));
    }

    /// <inheritdoc/>
    public override bool HasOneWriter => true;

    /// <inheritdoc/>
    public override PlannerContext Open() => contexts.CreateDbContext();

    /// <inheritdoc/>
    protected override async Task<IAsyncDisposable> BeginReading(PlannerContext context, CancellationToken stop) =>
        await DeferredReading.Begin(context, stop);

    /// <inheritdoc/>
    protected override StorageTroubleException? Explain(Exception exception) => SqliteTroubles.Explain(exception, file);

    /// <inheritdoc/>
    protected override async Task Migrate(PlannerContext context, CancellationToken stop)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        using var alone = await MigrationLock.Take(file, stop);
        // The file keeps this: readers see the last commit while the next is being written.
        await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", stop);
        await alone.ClearWhatACrashLeft(context, stop);
        await base.Migrate(context, stop);
    }
}
