using System.Globalization;
using Npgsql;

namespace EpisodePlanner.Databases.Servers;

/// <summary>Creates and drops the databases of one test run.</summary>
/// <remarks>
/// It does so over a single connection, which bears the run's name and stays open: a database of a run without a
/// connection is left from a crash.
/// </remarks>
internal sealed class DatabaseMaker : IAsyncDisposable
{
    private const string Prefix = "episode_planner_test_";

    /// <summary>Sorts words as people do, so that no query comes to rest on the order of bytes.</summary>
    private const string Empty = "template0 ENCODING 'UTF8' LOCALE_PROVIDER icu ICU_LOCALE 'en-US'";

    private readonly PostgreSqlServer server;
    private readonly NpgsqlConnection connection;
    private readonly SemaphoreSlim turn = new(1);
    private readonly string run;
    private int made;

    private DatabaseMaker(PostgreSqlServer server, NpgsqlConnection connection, string run) =>
        (this.server, this.connection, this.run) = (server, connection, run);

    public static async Task<DatabaseMaker> Start(PostgreSqlServer server)
    {
        var lasting = new NpgsqlConnectionStringBuilder(server.ConnectionString) { Pooling = false };
        var connection = new NpgsqlConnection(lasting.ToString());
        await connection.OpenAsync();
        var run = Prefix + connection.ProcessID.ToString(CultureInfo.InvariantCulture);
        var maker = new DatabaseMaker(server, connection, run);
        await maker.Sweep();
        await maker.Do($"SET application_name = '{run}'");
        return maker;
    }

    public string ConnectionString(string database) =>
        new NpgsqlConnectionStringBuilder(server.ConnectionString) { Database = database }.ToString();

    /// <summary>Creates a database.</summary>
    /// <param name="template">The name of one of this run to copy, or null for an empty one.</param>
    /// <returns>Its name.</returns>
    public async Task<string> Create(string? template)
    {
        var name = $"{run}_{Interlocked.Increment(ref made)}";
        if (template is not null)
        {
            Release(template);
            await Do($"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{template}'");
        }

        await Do($"CREATE DATABASE {name} TEMPLATE {template ?? Empty}");
        return name;
    }

    public async Task Drop(string name)
    {
        Release(name);
        await Do($"DROP DATABASE IF EXISTS {name} WITH (FORCE)");
    }

    public async ValueTask DisposeAsync()
    {
        await connection.DisposeAsync();
        await server.DisposeAsync();
        turn.Dispose();
    }

    /// <summary>Closes the idle connections that this process keeps to a database.</summary>
    private void Release(string name)
    {
        using var pooled = new NpgsqlConnection(ConnectionString(name));
        NpgsqlConnection.ClearPool(pooled);
    }

    /// <summary>Drops the databases whose run is no longer there.</summary>
    private async Task Sweep()
    {
        const string left =
            $"""
            SELECT d.datname FROM pg_database d
            WHERE starts_with(d.datname, '{Prefix}') AND NOT EXISTS (
                SELECT FROM pg_stat_activity a
                WHERE starts_with(a.application_name, '{Prefix}') AND starts_with(d.datname, a.application_name || '_'))
            """;
        foreach (var name in await Names(left))
        {
            await Do($"DROP DATABASE IF EXISTS {name} WITH (FORCE)");
        }
    }

    private async Task<List<string>> Names(string query)
    {
        await using var command = new NpgsqlCommand(query, connection);
        await using var reader = await command.ExecuteReaderAsync();
        var names = new List<string>();
        while (await reader.ReadAsync())
        {
            names.Add(reader.GetString(0));
        }

        return names;
    }

    private async Task Do(string sql)
    {
        await turn.WaitAsync();
        try
        {
            await using var command = new NpgsqlCommand(sql, connection);
            await command.ExecuteNonQueryAsync();
        }
        finally
        {
            turn.Release();
        }
    }
}
