using Npgsql;

namespace EpisodePlanner.Databases.Tests;

public sealed class PostgreSqlDatabasesTests(PostgreSqlDatabases databases)
{
    [Fact]
    public async Task New_IsEmptyAndItsOwn()
    {
        await using var first = await databases.New();
        await using var second = await databases.New();
        await Do(first, "CREATE TABLE words (word text)");

        await Do(second, "CREATE TABLE words (word text)");
        Assert.NotEqual(first.ConnectionString, second.ConnectionString);
        Assert.NotEqual(first.Folder, second.Folder);
    }

    [Fact]
    public async Task New_SortsWordsAsPeopleDo()
    {
        const string sorted = "SELECT string_agg(w, ', ' ORDER BY w) FROM unnest(ARRAY['cherry', 'Banana', 'apple']) w";
        await using var database = await databases.New();

        Assert.Equal("apple, Banana, cherry", await Ask(database, sorted));
    }

    [Fact]
    public async Task Copy_HasTheContentAndGoesItsOwnWay()
    {
        await using var first = await databases.New();
        await Do(first, "CREATE TABLE words (word text); INSERT INTO words VALUES ('kept')");

        await using var copy = await first.Copy();
        await Do(first, "UPDATE words SET word = 'changed'");

        Assert.Equal("kept", await Ask(copy, "SELECT word FROM words"));
    }

    [Fact]
    public async Task Disposed_IsGone()
    {
        var database = await databases.New();
        await Do(database, "SELECT 1");
        await database.DisposeAsync();

        var refused = await Assert.ThrowsAsync<PostgresException>(() => Do(database, "SELECT 1"));
        Assert.Equal(PostgresErrorCodes.InvalidCatalogName, refused.SqlState);
        Assert.False(Directory.Exists(database.Folder));
    }

    private static async Task Do(ITestDatabase database, string sql) => await Ask(database, sql);

    private static async Task<object?> Ask(ITestDatabase database, string sql)
    {
        await using var connection = new NpgsqlConnection(database.ConnectionString);
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = new NpgsqlCommand(sql, connection);
        return await command.ExecuteScalarAsync(TestContext.Current.CancellationToken);
    }
}
