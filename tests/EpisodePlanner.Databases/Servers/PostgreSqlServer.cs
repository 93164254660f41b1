namespace EpisodePlanner.Databases.Servers;

/// <summary>A PostgreSQL to make databases on; stopped when disposed of, unless it was there before.</summary>
internal sealed class PostgreSqlServer(string connectionString, Func<ValueTask> stop) : IAsyncDisposable
{
    /// <summary>
    /// Names the environment variable with the connection string of a server to use, whose user may create databases.
    /// </summary>
    public const string Variable = "EPISODE_PLANNER_TEST_POSTGRES";

    /// <summary>What every server made here runs with: nothing in it has to outlive a crash.</summary>
    public static readonly IReadOnlyList<(string Name, string Value)> Settings =
    [
        ("fsync", "off"),
        ("synchronous_commit", "off"),
        ("full_page_writes", "off"),
        ("max_connections", "300"),
    ];

    /// <summary>How to reach its first database.</summary>
    public string ConnectionString => connectionString;

    /// <summary>
    /// Takes the server named by the environment, else starts one in a container, else one of the machine's own.
    /// </summary>
    /// <exception cref="NoPostgreSqlException">There is none to be had.</exception>
    public static async Task<PostgreSqlServer> Start()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } given)
        {
            return new PostgreSqlServer(given, () => ValueTask.CompletedTask);
        }

        var reasons = new List<string>();
        return await ContainerServer.TryStart(reasons)
            ?? await OwnServer.TryStart(reasons)
            ?? throw new NoPostgreSqlException(
                $"There is no PostgreSQL for the tests: {string.Join("; ", reasons)}. " +
                $"Install it, or name a server by {Variable}.");
    }

    public ValueTask DisposeAsync() => stop();
}
