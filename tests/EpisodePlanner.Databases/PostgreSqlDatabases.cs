using EpisodePlanner.Databases.Folders;
using EpisodePlanner.Databases.Servers;
using Xunit.Sdk;

namespace EpisodePlanner.Databases;

/// <summary>Databases of one PostgreSQL, started when the first is asked for and stopped with the test process.</summary>
/// <remarks>
/// Where there is no PostgreSQL, a test that asks for a database is skipped with the reason; on CI it fails.
/// </remarks>
public sealed class PostgreSqlDatabases : ITestDatabases, IAsyncDisposable
{
    private const string Purpose = "beside-postgres";
    private readonly Lazy<Task<DatabaseMaker>> maker = new(Start);

    /// <inheritdoc/>
    public DatabaseKind Kind => DatabaseKind.PostgreSql;

    /// <summary>Whether a missing PostgreSQL is an error; so it is on CI.</summary>
    public bool IsRequired { get; init; } =
        string.Equals(Environment.GetEnvironmentVariable("CI"), "true", StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public async ValueTask<ITestDatabase> New()
    {
        try
        {
            return await PostgreSqlDatabase.Make(await maker.Value, template: null);
        }
        catch (NoPostgreSqlException missing) when (!IsRequired)
        {
            throw SkipException.ForSkip(missing.Message);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (maker is { IsValueCreated: true, Value.IsCompletedSuccessfully: true })
        {
            await (await maker.Value).DisposeAsync();
        }
    }

    private static async Task<DatabaseMaker> Start()
    {
        await TemporaryFolder.Sweep(Purpose, _ => Task.CompletedTask);
        return await DatabaseMaker.Start(await PostgreSqlServer.Start());
    }

    private sealed class PostgreSqlDatabase(DatabaseMaker maker, string name, TemporaryFolder folder)
        : ITestDatabase
    {
        public DatabaseKind Kind => DatabaseKind.PostgreSql;

        public string ConnectionString => maker.ConnectionString(name);

        public string Folder => folder.Path;

        public static async ValueTask<ITestDatabase> Make(DatabaseMaker maker, string? template) =>
            new PostgreSqlDatabase(maker, await maker.Create(template), TemporaryFolder.Create(Purpose));

        public ValueTask<ITestDatabase> Copy() => Make(maker, name);

        public async ValueTask DisposeAsync()
        {
            await maker.Drop(name);
            folder.Dispose();
        }
    }
}
