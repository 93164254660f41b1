using EpisodePlanner.Databases;

namespace EpisodePlanner.Data.Tests;

/// <summary>Prepared databases for the suites, each a copy of one that was migrated once; one for a test assembly.</summary>
public abstract class StoreDatabases(ITestDatabases databases) : IAsyncDisposable
{
    private readonly SemaphoreSlim turn = new(1);
    private ITestDatabase? prepared;

    /// <summary>A store over a database of its own.</summary>
    public async Task<StoreBench> New()
    {
        await turn.WaitAsync();
        try
        {
            prepared ??= await Prepare();
            return await StoreBench.Over(await prepared.Copy(), Open);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>A database that nobody has prepared.</summary>
    public ValueTask<ITestDatabase> Empty() => databases.New();

    /// <summary>The provider over a database.</summary>
    public abstract Storage Open(ITestDatabase database);

    public async ValueTask DisposeAsync()
    {
        await (prepared?.DisposeAsync() ?? ValueTask.CompletedTask);
        await (databases is IAsyncDisposable server ? server.DisposeAsync() : ValueTask.CompletedTask);
        turn.Dispose();
        GC.SuppressFinalize(this);
    }

    private async Task<ITestDatabase> Prepare()
    {
        var database = await databases.New();
        await Open(database).Prepare(CancellationToken.None);
        return database;
    }
}
