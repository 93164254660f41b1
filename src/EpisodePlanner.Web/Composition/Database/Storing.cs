using EpisodePlanner.Data.PostgreSql;
using EpisodePlanner.Data.Sqlite;
using Npgsql;

namespace EpisodePlanner.Web.Composition;

/// <summary>Chooses the database: the SQLite file of the data folder, or the PostgreSQL of the settings.</summary>
internal static class Storing
{
    /// <summary>The stores over the database of the settings.</summary>
    public static IServiceCollection AddStores(this IServiceCollection services, ServerSettings settings) =>
        settings.PostgreSql is { } server
            ? services.AddPostgreSqlStorage(server)
            : services.AddSqliteStorage(settings.DatabaseFile);

    /// <summary>What brings the database to this version's tables, and keeps it tidy.</summary>
    public static IServiceCollection AddPreparation(this IServiceCollection services) => services
        .AddSingleton<Preparation>()
        .AddHostedService(provider => provider.GetRequiredService<Preparation>())
        .AddHostedService<Housekeeping>();

    /// <summary>What is wrong with a connection string; null where nothing is. The sentence never repeats a value.</summary>
    public static string? ProblemOfPostgreSql(string text)
    {
        const string right = "Write it as in Host=db;Database=planner;Username=planner;Password=…";
        try
        {
            var parts = new NpgsqlConnectionStringBuilder(text);
            return string.IsNullOrEmpty(parts.Host) ? $"It names no Host. {right}" : null;
        }
        catch (Exception e) when (e is ArgumentException or FormatException or InvalidCastException or OverflowException)
        {
            return $"It can't be read as parts with ; between. {right}";
        }
    }
}
