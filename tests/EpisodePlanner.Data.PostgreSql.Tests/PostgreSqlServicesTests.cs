using EpisodePlanner.Data.Tests;
using Microsoft.Extensions.DependencyInjection;

namespace EpisodePlanner.Data.PostgreSql.Tests;

public sealed class PostgreSqlServicesTests(PostgreSqlStores stores)
{
    [Fact]
    public async Task AddPostgreSqlStorage_GivesTheStores()
    {
        await using var database = await stores.Empty();
        await using var services = new ServiceCollection()
            .AddSingleton<TimeProvider>(new TestClock())
            .AddPostgreSqlStorage(database.ConnectionString)
            .BuildServiceProvider();

        await services.GetRequiredService<Storage>().Prepare(StoreBench.Stop);
        await services.GetRequiredService<WorkshopStore>().Create(StoreBench.SampleWorkshop, "Anna", null, StoreBench.Stop);

        Assert.Single(await services.GetRequiredService<WorkshopStore>().List(StoreBench.Stop));
    }
}
