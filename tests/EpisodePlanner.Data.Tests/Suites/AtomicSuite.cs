using EpisodePlanner.Databases;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>A write that is cut off leaves nothing by half.</summary>
public abstract class AtomicSuite(StoreDatabases databases)
{
    private static readonly RequestKey Key = new("k", "abc");

    private static readonly Batch Change = new(
        [
            new NameChange("Shed"),
            new TaskChange(Id("sweep"), null),
            new UploadChange(Id("up-2"), Sound.Uploads.Single() with { Id = Id("up-2") }),
        ]);

    [Theory]
    [InlineData("workshops", "UPDATE")]
    [InlineData("things", "UPDATE")]
    [InlineData("uploads", "INSERT")]
    [InlineData("changes", "INSERT")]
    [InlineData("request_keys", "INSERT")]
    public async Task Make_CutOffAtATable_ChangesNothing(string table, string action)
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Execute(Trap(bench, table, action));

        await Assert.ThrowsAnyAsync<Exception>(() => bench.Try(made.Id, Change, null, Key));

        Same.Snapshots(made, await bench.Now(made.Id));
        Same.Snapshots(made, await bench.Cold(made.Id));
        Assert.Single((await bench.Store.History(made.Id, null, 9, Stop))!);
        await bench.Execute(Release(bench, table));
        var changed = Assert.IsType<Made>(await bench.Try(made.Id, Change, null, Key));
        Assert.Equal((2, false), (changed.Now.Version, changed.IsRepetition));
        Same.Snapshots(changed.Now, await bench.Cold(made.Id));
    }

    [Theory]
    [InlineData("things")]
    [InlineData("changes")]
    public async Task Create_CutOffAtATable_MakesNothing(string table)
    {
        await using var bench = await databases.New();
        await bench.Execute(Trap(bench, table, "INSERT"));

        await Assert.ThrowsAsync<DbUpdateException>(() => bench.Store.Create(Sound, Maker, Key, Stop));

        Assert.Empty(await bench.Store.List(Stop));
        await bench.Execute(Release(bench, table));
        Assert.False(Assert.IsType<Made>(await bench.Store.Create(Sound, Maker, Key, Stop)).IsRepetition);
    }

    [Theory]
    [InlineData("supposes", "DELETE")]
    [InlineData("changes", "INSERT")]
    public async Task Keep_CutOffAtATable_KeepsTheDraft(string table, string action)
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var draft = (await bench.Supposes.Put(made.Id, new(null, [], "Tidy", null, Change, Maker, null), Stop)).Kept!;
        await bench.Execute(Trap(bench, table, action));

        await Assert.ThrowsAnyAsync<Exception>(() => bench.Supposes.Keep(made.Id, draft.Id, Maker, Stop));

        Same.Snapshots(made, await bench.Cold(made.Id));
        Assert.Equal(draft, await bench.Supposes.Find(made.Id, draft.Id, Stop));
    }

    [Fact]
    public async Task Undo_CutOffAtItsMark_ChangesNothing()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var changed = await bench.Make(made.Id, Change);
        await bench.Execute(Trap(bench, "changes", "UPDATE"));

        await Assert.ThrowsAnyAsync<Exception>(() => bench.Store.Undo(made.Id, null, Maker, Expectation.None, Stop));

        Same.Snapshots(changed.Now, await bench.Cold(made.Id));
        Assert.All((await bench.Store.History(made.Id, null, 9, Stop))!, line => Assert.False(line.IsUndone));
    }

    /// <summary>Makes every statement of a kind on a table fail, as if the process had died there.</summary>
    private static string Trap(StoreBench bench, string table, string action) => bench.Database.Kind == DatabaseKind.Sqlite
        ? $"CREATE TRIGGER trap BEFORE {action} ON {table} BEGIN SELECT RAISE(ABORT, 'cut off'); END"
        : $"""
           CREATE FUNCTION trap() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'cut off'; END $$;
           CREATE TRIGGER trap BEFORE {action} ON {table} FOR EACH ROW EXECUTE FUNCTION trap();
           """;

    private static string Release(StoreBench bench, string table) => bench.Database.Kind == DatabaseKind.Sqlite
        ? "DROP TRIGGER trap"
        : $"DROP TRIGGER trap ON {table}";
}
