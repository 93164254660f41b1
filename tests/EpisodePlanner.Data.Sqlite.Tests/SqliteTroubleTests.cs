using EpisodePlanner.Data.Tests;
using EpisodePlanner.Planning;
using Microsoft.Data.Sqlite;
using static EpisodePlanner.Data.Tests.StoreBench;

namespace EpisodePlanner.Data.Sqlite.Tests;

/// <summary>
/// What is wrong with the file is said, nothing is changed, and the store goes on by itself when it is mended.
/// Result codes after https://www.sqlite.org/rescode.html.
/// </summary>
public sealed class SqliteTroubleTests(SqliteStores stores)
{
    [Fact]
    public async Task Make_WhereTheFileIsLocked_WaitsAndSaysSo()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        await using var other = await Connection(bench);
        await Run(other, "BEGIN IMMEDIATE");

        await AssertTrouble(StorageTrouble.Locked, "locked", () => Rename(bench, made));
        Same(made, await bench.Now(made.Id));
        await Run(other, "ROLLBACK");

        Assert.IsType<Made>(await Rename(bench, made));
    }

    [Fact]
    public async Task Make_WhereTheLockIsShort_JustWaits()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        await using var other = await Connection(bench);
        await Run(other, "BEGIN IMMEDIATE");

        var rename = Task.Run(() => Rename(bench, made), Stop);
        await Task.Delay(200, Stop);
        await Run(other, "ROLLBACK");

        Assert.IsType<Made>(await rename);
    }

    [Fact]
    public async Task Make_WhereThereIsNoRoom_SaysSo()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        var many = new Batch([.. Enumerable.Range(0, 500).Select(i => Note(i))]);

        // The limit is one of a connection; the pool hands out the one used last.
        await bench.Execute("PRAGMA max_page_count = 10");
        await AssertTrouble(StorageTrouble.Full, "no room", () => bench.Make(made.Id, many));
        Same(made, await bench.Cold(made.Id));
        await bench.Execute("PRAGMA max_page_count = 1000000");

        Assert.IsType<Made>(await bench.Try(made.Id, many));
    }

    [Fact]
    public async Task Make_WhereTheFileMayNotBeWritten_SaysSo()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);

        // As with a file that is read-only, by a setting of the connection: root may write to any file.
        await bench.Execute("PRAGMA query_only = ON");
        await AssertTrouble(StorageTrouble.ReadOnly, "can't be written", () => Rename(bench, made));
        Same(made, await bench.Now(made.Id));
        await bench.Execute("PRAGMA query_only = OFF");

        Assert.IsType<Made>(await Rename(bench, made));
    }

    [Fact]
    public async Task Prepare_WhereAFolderStandsInThePlaceOfTheFile_SaysSo()
    {
        await using var database = await stores.Empty();
        Directory.CreateDirectory(SqliteStores.FileOf(database));

        var storage = stores.Open(database);
        await AssertTrouble(StorageTrouble.Away, "can't be opened", () => storage.Prepare(Stop));

        Directory.Delete(SqliteStores.FileOf(database));
        await storage.Prepare(Stop);
    }

    [Fact]
    public async Task Prepare_WhereAFileStandsInThePlaceOfTheFolder_SaysSo()
    {
        await using var database = await stores.Empty();
        var folder = Path.Combine(database.Folder, "data");
        await File.WriteAllTextAsync(folder, "a file", Stop);

        var storage = new SqliteStorage(Path.Combine(folder, "planner.db"));
        await AssertTrouble(StorageTrouble.Away, "folder", () => storage.Prepare(Stop));
    }

    [Fact]
    public async Task Prepare_OfAFileThatIsNoDatabase_SaysSo()
    {
        await using var database = await stores.Empty();
        await File.WriteAllTextAsync(SqliteStores.FileOf(database), new string('x', 8_192), Stop);

        await AssertTrouble(StorageTrouble.Damaged, "no database", () => stores.Open(database).Prepare(Stop));
    }

    [Fact]
    public async Task Prepare_AfterAMigrationThatDied_GoesOn()
    {
        await using var database = await stores.Empty();
        await using (var other = new SqliteConnection(database.ConnectionString + ";Pooling=False"))
        {
            await other.OpenAsync(Stop);

            // What the migrator leaves behind where it is killed while it holds its own lock.
            await Run(other, "CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL)");
            await Run(other, "INSERT INTO __EFMigrationsLock VALUES (1, '2027-01-01 00:00:00')");
        }

        await stores.Open(database).Prepare(Stop);
    }

    [Fact]
    public async Task File_IsKeptInTheWayThatLosesNothing()
    {
        await using var bench = await stores.New();

        Assert.Equal("wal", await bench.Ask("PRAGMA journal_mode"));
        Assert.Equal("2", await bench.Ask("PRAGMA synchronous"));
        Assert.Equal("1", await bench.Ask("PRAGMA foreign_keys"));
        Assert.Equal("5000", await bench.Ask("PRAGMA busy_timeout"));
    }

    private static Task<EditOutcome> Rename(StoreBench bench, Snapshot made) => bench.Try(made.Id, new NameChange("Shed"));

    private static TaskChange Note(int i)
    {
        var id = new Id($"t{i}");
        var sweep = SampleWorkshop.Tasks.Find(new Id("sweep"))!;
        return new TaskChange(id, sweep with { Id = id, Note = new string('n', 1_000) });
    }

    private static void Same(Snapshot expected, Snapshot actual) =>
        Assert.Equal((expected.Version, expected.Workshop), (actual.Version, actual.Workshop));

    private static async Task AssertTrouble(StorageTrouble expected, string says, Func<Task> work)
    {
        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(work);
        Assert.Equal(expected, trouble.Trouble);
        Assert.Contains(says, trouble.Message, StringComparison.Ordinal);
    }

    private static async Task<SqliteConnection> Connection(StoreBench bench)
    {
        var connection = new SqliteConnection(bench.Database.ConnectionString + ";Pooling=False");
        await connection.OpenAsync(Stop);
        return connection;
    }

    private static async Task Run(SqliteConnection connection, string sql)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(Stop);
    }
}
