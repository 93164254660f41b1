using System.Security.Cryptography;
using Microsoft.Extensions.DependencyInjection;

namespace EpisodePlanner.Data;

/// <summary>Registers the stores over a database; each provider has a method of its own that calls this.</summary>
public static class StorageServices
{
    /// <summary>
    /// Adds <see cref="Storage"/>, <see cref="IdSource"/>, <see cref="WorkshopStore"/> and <see cref="SupposeStore"/>, one
    /// of each for the process. They take the <see cref="TimeProvider"/> that is registered beside them.
    /// </summary>
    /// <param name="services">The services.</param>
    /// <param name="open">Makes the database; it is not touched before <see cref="Storage.Prepare"/>.</param>
    public static IServiceCollection AddStorage(this IServiceCollection services, Func<IServiceProvider, Storage> open) =>
        services
            .AddSingleton(open)
            .AddSingleton(provider => new IdSource(provider.GetRequiredService<TimeProvider>(), RandomNumberGenerator.Create()))
            .AddSingleton<WorkshopStore>()
            .AddSingleton<SupposeStore>();
}
