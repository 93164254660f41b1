using EpisodePlanner.Planning;
using NodaTime;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>What is remembered between reads is never older than the database.</summary>
public abstract class MemorySuite(StoreDatabases databases)
{
    [Fact]
    public async Task Find_AfterAnotherProcessWrote_IsTheNewest()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var other = await bench.Again();
        await other.Now(made.Id);

        for (var i = 0; i < 5; i++)
        {
            var changed = await bench.Make(made.Id, new NameChange($"Shed {i}"));
            bench.Clock.Move(Duration.FromMinutes(1));
            Same.Snapshots(changed.Now, await other.Now(made.Id));
        }
    }

    [Fact]
    public async Task Find_OfAnUnchangedWorkshop_IsTheSameObject()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        Assert.Same(made, await bench.Now(made.Id));
    }

    [Fact]
    public async Task Find_AfterManyChanges_ReadsTheRows()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var other = await bench.Again();
        await other.Now(made.Id);
        Made? last = null;
        for (var i = 0; i < 300; i++)
        {
            last = await bench.Make(made.Id, new NameChange($"Shed {i}"));
        }

        Same.Snapshots(last!.Now, await other.Now(made.Id));
    }

    [Fact]
    public async Task Find_WhereAnotherHistoryLedToTheVersion_ReadsTheRows()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Make(made.Id, new NameChange("Shed"));

        // As after a copy was brought back that went on elsewhere: the same version, made at another moment.
        await bench.Execute("UPDATE workshops SET changed_at = created_at - " + bench.Hour);
        await bench.Execute(bench.Replace("things", "body", "Shed", "Barn"));

        Assert.Equal("Barn", (await bench.Now(made.Id)).Workshop.Name);
    }

    [Fact]
    public async Task MovePlannedAt_OnlyOnwards_AndOnlyAtTheVersion()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var later = made.PlannedAt + Duration.FromMinutes(90);

        var moved = await bench.Store.MovePlannedAt(made.Id, 1, later + Duration.FromSeconds(59), Stop);
        var back = await bench.Store.MovePlannedAt(made.Id, 1, made.PlannedAt, Stop);
        var stale = await bench.Store.MovePlannedAt(made.Id, 2, later + Duration.FromHours(9), Stop);

        Assert.Equal((1L, later), (moved!.Version, moved.PlannedAt));
        Assert.Equal((later, later), (back!.PlannedAt, stale!.PlannedAt));
        Same.Snapshots(moved, await bench.Cold(made.Id));
        Assert.Null(await bench.Store.MovePlannedAt(Id("nobody"), 1, later, Stop));
        Assert.Equal(made.PlannedAt, (await bench.Make(made.Id, new NameChange("Shed"))).Now.PlannedAt);
    }

    [Theory]
    [InlineData("""{"id":"sweep"}""", "name")]
    [InlineData("""[1]""", "object")]
    public async Task Find_WhereABodyIsDamaged_NamesTheRow(string body, string says)
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Execute($"UPDATE things SET body = '{body}' WHERE id = 'sweep'");

        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => bench.Cold(made.Id));

        Assert.Equal(StorageTrouble.Damaged, trouble.Trouble);
        Assert.Contains("tasks/sweep", trouble.Message, StringComparison.Ordinal);
        Assert.Contains(says, trouble.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE log SET task = '?' WHERE id = 'log-1'", "log/log-1")]
    [InlineData("UPDATE log SET outcome = 'maybe' WHERE id = 'log-1'", "log")]
    [InlineData("UPDATE things SET kind = 'ghosts' WHERE id = 'sweep'", "ghosts/sweep")]
    [InlineData("DELETE FROM things WHERE kind = 'about'", "about")]
    public async Task Find_WhereARowIsDamaged_NamesIt(string damage, string named)
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Execute(damage);

        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => bench.Cold(made.Id));

        Assert.Equal(StorageTrouble.Damaged, trouble.Trouble);
        Assert.Contains(named, trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Use_BeforeItIsPrepared_IsNotReady()
    {
        await using var database = await databases.Empty();
        var storage = databases.Open(database);

        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => storage.Probe(Stop));
        Assert.Equal(StorageTrouble.NotReady, trouble.Trouble);

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => databases.Open(database).Prepare(Stop)));
        await storage.Prepare(Stop);
        await storage.Probe(Stop);
    }

    [Fact]
    public async Task Prepare_ADatabaseOfANewerVersion_IsRefused()
    {
        await using var bench = await databases.New();
        await bench.Execute(
            """INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion") VALUES ('29990101000000_Later', '99.0')""");

        var trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => bench.Again());

        Assert.Equal(StorageTrouble.Newer, trouble.Trouble);
        Assert.Contains("29990101000000_Later", trouble.Message, StringComparison.Ordinal);
    }
}
