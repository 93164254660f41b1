using Microsoft.Extensions.DependencyInjection;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>Registers the server database.</summary>
public static class PostgreSqlServices
{
    /// <summary>Adds the stores over a server. Call <see cref="Storage.Prepare"/> before the first of them is used.</summary>
    /// <param name="services">The services; a <see cref="TimeProvider"/> must be among them.</param>
    /// <param name="connectionString">How to reach the database; it is created where it is missing and the user may do so.</param>
    public static IServiceCollection AddPostgreSqlStorage(this IServiceCollection services, string connectionString) =>
        services.AddStorage(_ => new PostgreSqlStorage(connectionString));
}
