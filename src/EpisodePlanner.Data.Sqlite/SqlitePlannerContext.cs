using EpisodePlanner.Data.Sqlite.Converting;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>The tables in SQLite, which knows no moments and no dates: they are kept as numbers and texts that sort alike.</summary>
/// <param name="options">How to reach the file.</param>
public sealed class SqlitePlannerContext(DbContextOptions<SqlitePlannerContext> options) : PlannerContext(options)
{
    /// <inheritdoc/>
    protected override string JsonColumn => "TEXT";

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Instant>().HaveConversion<InstantConverter>();
        configurationBuilder.Properties<LocalDate>().HaveConversion<LocalDateConverter>();
    }
}
