using Microsoft.EntityFrameworkCore.Design;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>Gives the migration tool a context; it only looks at the model.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<SqlitePlannerContext>
{
    /// <inheritdoc/>
    public SqlitePlannerContext CreateDbContext(string[] args) => new(SqliteOptions.For("design-time.db"));
}
