namespace EpisodePlanner.Databases;

/// <summary>The databases that every suite about storing runs on.</summary>
public enum DatabaseKind
{
    /// <summary>A file in a temporary folder.</summary>
    Sqlite,

    /// <summary>A database of a server that the test process shares.</summary>
    PostgreSql,
}

/// <summary>Gives tests databases of their own; one for the whole test assembly.</summary>
/// <remarks>
/// A suite is an abstract class that takes this, with one sealed class for <see cref="SqliteDatabases"/> and one for
/// <see cref="PostgreSqlDatabases"/>; the assembly names both as its fixtures:
/// <code>
/// [assembly: AssemblyFixture(typeof(SqliteDatabases))]
/// [assembly: AssemblyFixture(typeof(PostgreSqlDatabases))]
///
/// public abstract class StoreSuite(ITestDatabases databases) { … }
/// public sealed class SqliteStoreTests(SqliteDatabases databases) : StoreSuite(databases);
/// public sealed class PostgreSqlStoreTests(PostgreSqlDatabases databases) : StoreSuite(databases);
/// </code>
/// </remarks>
public interface ITestDatabases
{
    /// <summary>Which databases these are.</summary>
    DatabaseKind Kind { get; }

    /// <summary>Makes an empty database; whoever asks for it disposes of it.</summary>
    ValueTask<ITestDatabase> New();
}

/// <summary>One database, gone when disposed of.</summary>
public interface ITestDatabase : IAsyncDisposable
{
    /// <summary>Which database this is.</summary>
    DatabaseKind Kind { get; }

    /// <summary>How to reach it.</summary>
    string ConnectionString { get; }

    /// <summary>A temporary folder of its own; for SQLite the one that holds the file.</summary>
    string Folder { get; }

    /// <summary>
    /// Makes another database with the same content, much faster than migrating again. Nothing may write to this one
    /// meanwhile; on PostgreSQL its connections are cut.
    /// </summary>
    ValueTask<ITestDatabase> Copy();
}
