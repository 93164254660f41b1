namespace EpisodePlanner.Databases.Tests;

public sealed class SqliteDatabasesTests(SqliteDatabases databases)
{
    [Fact]
    public async Task Copy_TakesTheFileAndItsJournal()
    {
        await using var first = await databases.New();
        var file = first.ConnectionString["Data Source=".Length..];
        foreach (var (ending, content) in new[] { ("", "pages"), ("-wal", "journal"), ("-shm", "shared") })
        {
            await File.WriteAllTextAsync(file + ending, content, TestContext.Current.CancellationToken);
        }

        await using var copy = await first.Copy();

        Assert.Equal(
            ["episode-planner.db", "episode-planner.db-wal"],
            Directory.EnumerateFiles(copy.Folder, "episode*").Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Disposed_IsGone()
    {
        var database = await databases.New();
        Assert.True(Directory.Exists(database.Folder));

        await database.DisposeAsync();

        Assert.False(Directory.Exists(database.Folder));
    }

    [Fact]
    public async Task Left_BySomebodyWhoCrashed_GoesWithTheNextRun()
    {
        // The lock of a process goes with it, its file stays.
        var left = Directory.CreateTempSubdirectory("episode-planner-sqlite-").FullName;
        await File.WriteAllTextAsync(Path.Combine(left, "in-use"), "", TestContext.Current.CancellationToken);
        await using var used = await databases.New();

        await SqliteDatabases.Sweep();

        Assert.False(Directory.Exists(left));
        Assert.True(Directory.Exists(used.Folder));
    }
}
