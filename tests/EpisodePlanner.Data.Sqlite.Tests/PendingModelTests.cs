using EpisodePlanner.Data.Tests;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Sqlite.Tests;

public sealed class PendingModelTests(SqliteStores stores)
{
    [Fact]
    public async Task Model_HasNoChangeThatNoMigrationMakes()
    {
        await using var bench = await stores.New();
        await using var context = bench.Storage.Open();

        Assert.False(context.Database.HasPendingModelChanges());
        Assert.Empty(await context.Database.GetPendingMigrationsAsync(StoreBench.Stop));
    }
}
