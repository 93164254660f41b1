using EpisodePlanner.Data.Tests;
using Microsoft.Extensions.DependencyInjection;

namespace EpisodePlanner.Data.Sqlite.Tests;

public sealed class SqliteServicesTests(SqliteStores stores)
{
    [Fact]
    public async Task AddSqliteStorage_GivesTheStores_OverAFolderToBeMade()
    {
        await using var database = await stores.Empty();
        var file = Path.Combine(database.Folder, "data", "planner.db");
        await using var services = new ServiceCollection()
            .AddSingleton<TimeProvider>(new TestClock())
            .AddSqliteStorage(file)
            .BuildServiceProvider();

        await services.GetRequiredService<Storage>().Prepare(StoreBench.Stop);
        await services.GetRequiredService<WorkshopStore>().Create(StoreBench.SampleWorkshop, "Anna", null, StoreBench.Stop);

        Assert.Single(await services.GetRequiredService<WorkshopStore>().List(StoreBench.Stop));
        Assert.Same(services.GetRequiredService<SupposeStore>(), services.GetRequiredService<SupposeStore>());
        Assert.True(File.Exists(file));
    }
}
