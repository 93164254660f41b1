using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>How the file is opened.</summary>
internal static class SqliteOptions
{
    public static DbContextOptions<SqlitePlannerContext> For(string file)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            ForeignKeys = true,
            // SQLite itself waits for locks; after that there is no second round.
            DefaultTimeout = 1,
        };
        return new DbContextOptionsBuilder<SqlitePlannerContext>()
            .UseSqlite(connection.ToString())
            .AddInterceptors(new ConnectionSettings())
            .Options;
    }
}
