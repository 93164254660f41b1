namespace EpisodePlanner.Browser.Tests;

/// <summary>One demo site for a class of tests that change nothing.</summary>
public sealed class DemoSite : IAsyncLifetime
{
    internal Site Site { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Site = await Site.Demo();

    public ValueTask DisposeAsync() => Site.DisposeAsync();
}
