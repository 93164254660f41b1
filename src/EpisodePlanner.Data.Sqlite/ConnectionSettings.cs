using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>Sets on each connection what SQLite does not keep in the file.</summary>
internal sealed class ConnectionSettings : DbConnectionInterceptor
{
    /// <summary>
    /// The wait for a lock is 5 seconds, first of all for what follows, which may meet one already. "FULL" syncs the log at
    /// each commit: what was acknowledged outlives a power cut.
    /// </summary>
    private const string Settings = "PRAGMA busy_timeout = 5000; PRAGMA synchronous = FULL;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Settings;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
