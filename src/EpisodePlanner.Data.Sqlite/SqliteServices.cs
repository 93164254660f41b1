using Microsoft.Extensions.DependencyInjection;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>Registers the embedded database.</summary>
public static class SqliteServices
{
    /// <summary>Adds the stores over a file. Call <see cref="Storage.Prepare"/> before the first of them is used.</summary>
    /// <param name="services">The services; a <see cref="TimeProvider"/> must be among them.</param>
    /// <param name="file">The database file; it is created with its folder where it is missing.</param>
    public static IServiceCollection AddSqliteStorage(this IServiceCollection services, string file) =>
        services.AddStorage(_ => new SqliteStorage(file));
}
