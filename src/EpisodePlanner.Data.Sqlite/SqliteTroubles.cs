using Microsoft.Data.Sqlite;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>What SQLite's result codes mean (https://www.sqlite.org/rescode.html).</summary>
internal static class SqliteTroubles
{
    private const int Error = 1;
    private const int NotPermitted = 3;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CantOpen = 14;
    private const int NotADatabase = 26;

    /// <summary>The trouble with a file, or null.</summary>
    public static StorageTroubleException? Explain(Exception exception, string file) => exception switch
    {
        SqliteException sqlite => Explain(sqlite, file),
        UnauthorizedAccessException => Trouble(StorageTrouble.ReadOnly, exception, $"The folder of '{file}' can't be written to; give this user the right to."),
        IOException => Trouble(StorageTrouble.Away, exception, $"The folder of '{file}' can't be used: {exception.Message}"),
        _ => null,
    };

    private static StorageTroubleException? Explain(SqliteException exception, string file) => exception.SqliteErrorCode switch
    {
        Busy or Locked => Trouble(StorageTrouble.Locked, exception, $"The database '{file}' is locked by another program; close that, or try again in a moment."),
        ReadOnly or NotPermitted => Trouble(StorageTrouble.ReadOnly, exception, $"The database '{file}' can't be written to; give this user the right to write to the file and its folder."),
        Full => Trouble(StorageTrouble.Full, exception, $"There is no room left for the database '{file}'; make some on its disk."),
        CantOpen => Trouble(StorageTrouble.Away, exception, $"The database '{file}' can't be opened; it must be a file, in a folder that this user may use."),
        InputOutput => Trouble(StorageTrouble.Away, exception, $"The disk of the database '{file}' does not answer as it should."),
        Corrupt or NotADatabase => Trouble(StorageTrouble.Damaged, exception, $"'{file}' is no database, or a damaged one; bring it back from a copy."),
        Error when exception.Message.Contains("no such table", StringComparison.Ordinal) =>
            Trouble(StorageTrouble.NotReady, exception, $"The database '{file}' has no tables yet; start the planner anew to prepare it."),
        _ => null,
    };

    private static StorageTroubleException Trouble(StorageTrouble trouble, Exception cause, string says) => new(trouble, says, cause);
}
