using System.Net;
using System.Net.Sockets;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using static EpisodePlanner.Data.Tests.StoreBench;

namespace EpisodePlanner.Data.PostgreSql.Tests;

/// <summary>
/// What is wrong with the server is said, nothing is changed, and the store goes on by itself when it is mended.
/// Codes after the PostgreSQL documentation, appendix A.
/// </summary>
public sealed class PostgreSqlTroubleTests(PostgreSqlStores stores)
{
    [Fact]
    public async Task Prepare_WhereNobodyListens_SaysSo()
    {
        var storage = new PostgreSqlStorage($"Host=127.0.0.1;Port={FreePort()};Database=none;Username=nobody;Password=secret");

        var trouble = await AssertTrouble(StorageTrouble.Away, "can't be reached", () => storage.Prepare(Stop));

        Assert.DoesNotContain("secret", trouble.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Prepare_WhereTheDatabaseIsMissing_CreatesIt_AndSaysWhereItIsGone()
    {
        await using var bench = await stores.New();
        var name = await bench.Ask("SELECT current_database()") + "_other";
        var storage = new PostgreSqlStorage($"{bench.Database.ConnectionString};Database={name}");

        await storage.Prepare(Stop);
        await storage.Probe(Stop);
        await bench.Execute($"DROP DATABASE {name} WITH (FORCE)");

        await AssertTrouble(StorageTrouble.Away, "can't be reached", () => storage.Probe(Stop));
        await AssertTrouble(StorageTrouble.Away, "no database of that name", () => storage.Probe(Stop));
    }

    [Fact]
    public async Task Make_WhereTheServerWentAndCameBack_GoesOn()
    {
        await using var bench = await stores.New();
        await using var elsewhere = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        var name = await bench.Ask("SELECT current_database()");

        // Connections are cut and no new one is let in, as when a server restarts.
        await elsewhere.Execute($"ALTER DATABASE {name} WITH ALLOW_CONNECTIONS false");
        await elsewhere.Execute($"SELECT count(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE datname = '{name}'");
        await AssertTrouble(StorageTrouble.Away, "can't be reached", () => bench.Try(made.Id, new NameChange("Shed")));
        await AssertTrouble(StorageTrouble.Away, "can't be reached", () => bench.Store.Find(made.Id, Stop));
        await elsewhere.Execute($"ALTER DATABASE {name} WITH ALLOW_CONNECTIONS true");

        Assert.Equal(made.Version, (await bench.Now(made.Id)).Version);
        Assert.IsType<Made>(await bench.Try(made.Id, new NameChange("Shed")));
    }

    [Fact]
    public async Task Make_WhereTheDatabaseIsReadOnly_SaysSo()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        var readOnly = new PostgreSqlStorage(
            bench.Database.ConnectionString + ";Options=-c default_transaction_read_only=on");
        await readOnly.Prepare(Stop);
        var store = new WorkshopStore(
            readOnly, new IdSource(bench.Clock, System.Security.Cryptography.RandomNumberGenerator.Create()), bench.Clock);

        Assert.Equal(made.Version, (await store.Find(made.Id, Stop)).Found!.Version);
        await AssertTrouble(
            StorageTrouble.ReadOnly,
            "read only",
            () => store.Make(made.Id, new Edit(new NameChange("Shed"), Maker), Stop));
    }

    [Fact]
    public async Task Make_WhereTheRowIsLocked_WaitsAndSaysSo()
    {
        await using var bench = await stores.New();
        var made = await bench.Create(SampleWorkshop);
        await using var other = bench.Storage.Open();
        await using var held = await other.Database.BeginTransactionAsync(Stop);
        await other.Database.ExecuteSqlRawAsync("UPDATE workshops SET owner = owner", Stop);
        var hasty = new PostgreSqlStorage(bench.Database.ConnectionString + ";Options=-c lock_timeout=200");
        await hasty.Prepare(Stop);
        var store = new WorkshopStore(
            hasty, new IdSource(bench.Clock, System.Security.Cryptography.RandomNumberGenerator.Create()), bench.Clock);

        await AssertTrouble(
            StorageTrouble.Locked, "locked", () => store.Make(made.Id, new Edit(new NameChange("Shed"), Maker), Stop));
        await held.RollbackAsync(Stop);

        Assert.IsType<Made>(await store.Make(made.Id, new Edit(new NameChange("Shed"), Maker), Stop));
    }

    private static async Task<StorageTroubleException> AssertTrouble(StorageTrouble expected, string says, Func<Task> work)
    {
        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(work);
        Assert.Equal(expected, trouble.Trouble);
        Assert.Contains(says, trouble.Message, StringComparison.Ordinal);
        return trouble;
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
