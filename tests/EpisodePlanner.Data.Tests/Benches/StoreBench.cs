using System.Globalization;
using System.Security.Cryptography;
using EpisodePlanner.Databases;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Tests;

/// <summary>A store over a database of its own, with a clock that the test moves.</summary>
public sealed class StoreBench : IAsyncDisposable
{
    public const string Maker = "Anna";

    private readonly Func<ITestDatabase, Storage> open;

    private StoreBench(ITestDatabase database, Func<ITestDatabase, Storage> open, TestClock clock)
    {
        (Database, this.open, Clock) = (database, open, clock);
        Storage = open(database);
        Store = new WorkshopStore(Storage, new IdSource(clock, RandomNumberGenerator.Create()), clock);
        Supposes = new SupposeStore(Store);
    }

    /// <summary>A small sound workshop with at least one of everything.</summary>
    public static Workshop SampleWorkshop => Planning.Tests.Sample.Sound;

    public ITestDatabase Database { get; }

    public TestClock Clock { get; }

    public Storage Storage { get; }

    public WorkshopStore Store { get; }

    public SupposeStore Supposes { get; }

    public static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static async Task<StoreBench> Over(ITestDatabase database, Func<ITestDatabase, Storage> open)
    {
        var bench = new StoreBench(database, open, new TestClock());
        await bench.Storage.Prepare(Stop);
        return bench;
    }

    /// <summary>Another store over the same database, as another process would have it: nothing is in its memory.</summary>
    public async Task<StoreBench> Again()
    {
        var other = new StoreBench(Database, open, Clock);
        await other.Storage.Prepare(Stop);
        return other;
    }

    /// <summary>Makes a workshop.</summary>
    public async Task<Snapshot> Create(Workshop workshop) =>
        Assert.IsType<Made>(await Store.Create(workshop, Maker, null, Stop)).Now;

    /// <summary>Makes a change that must succeed.</summary>
    public async Task<Made> Make(Id workshop, Change change) => Assert.IsType<Made>(await Try(workshop, change));

    /// <summary>Makes a change that may fail.</summary>
    public Task<EditOutcome> Try(Id workshop, Change change, Expectation? expects = null, RequestKey? key = null) =>
        Store.Make(workshop, new Edit(change, Maker) { Expects = expects ?? Expectation.None, Key = key }, Stop);

    /// <summary>The workshop as it is now.</summary>
    public async Task<Snapshot> Now(Id workshop) => (await Store.Find(workshop, Stop)).Found!;

    /// <summary>The workshop as one sees it who remembers nothing.</summary>
    public async Task<Snapshot> Cold(Id workshop) => await (await Again()).Now(workshop);

    /// <summary>An hour as the database counts moments.</summary>
    public string Hour => Database.Kind == DatabaseKind.Sqlite ? "36000000000" : "interval '1 hour'";

    /// <summary>The statement that replaces a text in a JSON column.</summary>
    public string Replace(string table, string column, string from, string to) => Database.Kind == DatabaseKind.Sqlite
        ? $"UPDATE {table} SET {column} = REPLACE({column}, '{from}', '{to}')"
        : $"UPDATE {table} SET {column} = REPLACE({column}::text, '{from}', '{to}')::jsonb";

    /// <summary>Does something to the database past the store.</summary>
    public Task Execute(string sql) => Ask(sql);

    /// <summary>Asks the database past the store.</summary>
    /// <returns>The first value, as text.</returns>
    public async Task<string?> Ask(string sql)
    {
        await using var context = Storage.Open();
        await context.Database.OpenConnectionAsync(Stop);
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(await command.ExecuteScalarAsync(Stop), CultureInfo.InvariantCulture);
    }

    public ValueTask DisposeAsync() => Database.DisposeAsync();
}
