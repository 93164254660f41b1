using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>The tables in PostgreSQL: bodies are jsonb, moments and dates are the server's own.</summary>
/// <param name="options">How to reach the server.</param>
public sealed class PostgreSqlPlannerContext(DbContextOptions<PostgreSqlPlannerContext> options) : PlannerContext(options)
{
    /// <inheritdoc/>
    protected override string JsonColumn => "jsonb";
}
