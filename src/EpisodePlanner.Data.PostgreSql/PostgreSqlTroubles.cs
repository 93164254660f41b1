using System.Net.Sockets;
using Npgsql;

namespace EpisodePlanner.Data.PostgreSql;

/// <summary>What the server's codes mean (PostgreSQL documentation, appendix A), and what it means that it is silent.</summary>
internal static class PostgreSqlTroubles
{
    /// <summary>The trouble with the server, or null. Nothing that the server says of itself is repeated: it may name secrets.</summary>
    public static StorageTroubleException? Explain(Exception exception) => exception switch
    {
        PostgresException server => Explain(server),
        NpgsqlException or SocketException or TimeoutException => Away(exception),
        _ => null,
    };

    private static StorageTroubleException? Explain(PostgresException exception) => exception.SqlState switch
    {
        PostgresErrorCodes.ReadOnlySqlTransaction or PostgresErrorCodes.InsufficientPrivilege => new(
            StorageTrouble.ReadOnly, "The database server lets this user read only; give it the right to write.", exception),
        PostgresErrorCodes.DiskFull => new(
            StorageTrouble.Full, "There is no room left on the database server; make some on its disk.", exception),
        PostgresErrorCodes.LockNotAvailable or PostgresErrorCodes.DeadlockDetected or PostgresErrorCodes.SerializationFailure
            or PostgresErrorCodes.QueryCanceled => new(
            StorageTrouble.Locked, "Others hold the database locked for too long; try again in a moment.", exception),
        PostgresErrorCodes.DataCorrupted or PostgresErrorCodes.IndexCorrupted => new(
            StorageTrouble.Damaged, "The database is damaged; bring it back from a copy.", exception),
        PostgresErrorCodes.UndefinedTable or PostgresErrorCodes.UndefinedColumn => new(
            StorageTrouble.NotReady, "The database has not the tables it should; start the planner anew to prepare it.", exception),
        PostgresErrorCodes.InvalidCatalogName => new(
            StorageTrouble.Away, "The server has no database of that name; create it, or correct the connection string.", exception),
        PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification => new(
            StorageTrouble.Away, "The database server refuses this user; correct the connection string.", exception),
        _ when IsAbsence(exception.SqlState) => Away(exception),
        _ => null,
    };

    /// <summary>Connection exceptions, too many connections, and a server or database that starts, stops or is shut.</summary>
    private static bool IsAbsence(string state) =>
        state.StartsWith("08", StringComparison.Ordinal)
        || state is PostgresErrorCodes.TooManyConnections or PostgresErrorCodes.AdminShutdown
            or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow
            or PostgresErrorCodes.ObjectNotInPrerequisiteState;

    private static StorageTroubleException Away(Exception exception) => new(
        StorageTrouble.Away, "The database server can't be reached; it is tried again with the next request.", exception);
}
