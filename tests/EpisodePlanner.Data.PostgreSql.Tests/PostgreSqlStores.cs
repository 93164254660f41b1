using EpisodePlanner.Data.Tests;
using EpisodePlanner.Databases;

namespace EpisodePlanner.Data.PostgreSql.Tests;

/// <summary>Prepared databases of a PostgreSQL server.</summary>
public sealed class PostgreSqlStores() : StoreDatabases(new PostgreSqlDatabases())
{
    public override Storage Open(ITestDatabase database) => new PostgreSqlStorage(database.ConnectionString);
}
