using EpisodePlanner.Databases;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>One server for the tests of a class; each test makes workshops of its own.</summary>
public abstract class ApiFixture(ITestDatabases databases) : IAsyncLifetime
{
    private ApiServer? server;

    /// <summary>The databases, for tests that need a server of their own.</summary>
    public ITestDatabases Databases => databases;

    internal ApiClient Api => server!.Api;

    internal ApiServer Server => server!;

    public async ValueTask InitializeAsync() => server = await ApiServer.Start(databases);

    public async ValueTask DisposeAsync()
    {
        await (server?.DisposeAsync() ?? ValueTask.CompletedTask);
        GC.SuppressFinalize(this);
    }
}

public sealed class SqliteApi(SqliteDatabases databases) : ApiFixture(databases);

public sealed class PostgreSqlApi(PostgreSqlDatabases databases) : ApiFixture(databases);
