using EpisodePlanner.Data.Tests;
using EpisodePlanner.Databases;

namespace EpisodePlanner.Data.Sqlite.Tests;

/// <summary>Prepared SQLite files.</summary>
public sealed class SqliteStores() : StoreDatabases(new SqliteDatabases())
{
    public override Storage Open(ITestDatabase database) => new SqliteStorage(FileOf(database));

    public static string FileOf(ITestDatabase database) =>
        new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder(database.ConnectionString).DataSource;
}
