namespace EpisodePlanner.Browser.Tests;

/// <summary>The pages that every rule of access and layout is held against, on the demo workshop.</summary>
internal static class EveryPage
{
    public static TheoryData<string> Paths =>
    [
        "", "/bench", "/silence", "/story", "/series", "/series/ferry", "/stations", "/why/ferry-e8", "/why/nobody", "/cadence", "/letter", "/changes", "/settings",
        "/settings/all", "/settings/about", "/edit/tasks/print-motor-bell", "/edit/series/ferry", "/new/people", "/new/log",
        "/edit/tasks/no-such-task",
    ];
}

/// <summary>One demo site for a class of tests that change nothing.</summary>
public sealed class DemoSite : IAsyncLifetime
{
    internal Site Site { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Site = await Site.Demo();

    public ValueTask DisposeAsync() => Site.DisposeAsync();
}
