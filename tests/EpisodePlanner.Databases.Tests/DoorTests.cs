using Npgsql;

namespace EpisodePlanner.Databases.Tests;

public sealed class DoorTests(PostgreSqlDatabases databases)
{
    [Fact]
    public async Task Door_OpenShutAndOpenAgain()
    {
        await using var database = await databases.New();
        await using var door = new Door(database);
        await using var source = NpgsqlDataSource.Create(door.ConnectionString);
        Assert.Equal(1, await Ask(source));

        await door.Shut();
        await Assert.ThrowsAnyAsync<NpgsqlException>(() => Ask(source));
        await Assert.ThrowsAnyAsync<NpgsqlException>(() => Ask(source));

        door.Open();
        Assert.Equal(1, await Ask(source));
    }

    private static async Task<object?> Ask(NpgsqlDataSource source)
    {
        await using var command = source.CreateCommand("SELECT 1");
        return await command.ExecuteScalarAsync(TestContext.Current.CancellationToken);
    }
}
