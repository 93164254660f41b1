using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Composition;

/// <summary>The database of the settings without a server, for a command that is done in a moment.</summary>
public sealed class OpenedStore : IAsyncDisposable
{
    private readonly ServiceProvider services;

    private OpenedStore(ServiceProvider services) => this.services = services;

    /// <summary>The workshops.</summary>
    public WorkshopStore Workshops => services.GetRequiredService<WorkshopStore>();

    /// <summary>Opens it, brought to this version's tables.</summary>
    /// <exception cref="StorageTroubleException">It can't do its work now.</exception>
    public static async Task<OpenedStore> Open(ServerSettings settings, TimeProvider clock, CancellationToken stop)
    {
        var opened = new OpenedStore(new ServiceCollection().AddSingleton(clock).AddStores(settings).BuildServiceProvider());
        try
        {
            await opened.services.GetRequiredService<Storage>().Prepare(stop).ConfigureAwait(false);
            return opened;
        }
        catch
        {
            await opened.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => services.DisposeAsync();
}
