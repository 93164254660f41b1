using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>How the server is reached.</summary>
internal static class PostgreSqlOptions
{
    private const int SecondsToConnect = 5;
    private const int SecondsForACommand = 15;

    public static DbContextOptions<PostgreSqlPlannerContext> For(string connectionString)
    {
        var given = new NpgsqlConnectionStringBuilder(connectionString);
        var connection = new NpgsqlConnectionStringBuilder
        {
            // What the settings say counts; these are ours where they say nothing.
            ["Timeout"] = SecondsToConnect,
            ["Command Timeout"] = SecondsForACommand,
            ["Application Name"] = "episode-planner",
        };
        foreach (var key in given.Keys.Cast<string>())
        {
            connection[key] = given[key];
        }

        return new DbContextOptionsBuilder<PostgreSqlPlannerContext>()
            .UseNpgsql(connection.ToString(), npgsql => npgsql.UseNodaTime())
            .Options;
    }
}
