using Microsoft.EntityFrameworkCore.Design;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>Gives the migration tool a context; it only looks at the model.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<PostgreSqlPlannerContext>
{
    /// <inheritdoc/>
    public PostgreSqlPlannerContext CreateDbContext(string[] args) => new(PostgreSqlOptions.For("Host=localhost"));
}
