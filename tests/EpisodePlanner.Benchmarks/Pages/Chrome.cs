using Microsoft.Playwright;

namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>The Chromium of the machine.</summary>
internal sealed class Chrome : IAsyncDisposable
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private readonly IPlaywright playwright;
    private readonly IBrowser browser;

    private Chrome(IPlaywright playwright, IBrowser browser) => (this.playwright, this.browser) = (playwright, browser);

    /// <summary>Starts it; null where there is none.</summary>
    public static async Task<Chrome?> Start()
    {
        if (Array.Find(Places, File.Exists) is not { } place)
        {
            return null;
        }

        var playwright = await Playwright.CreateAsync();
        return new Chrome(playwright, await playwright.Chromium.LaunchAsync(new() { ExecutablePath = place, Args = Arguments }));
    }

    /// <summary>A page of a browser that has kept nothing.</summary>
    public async Task<IPage> Page(BrowserNewContextOptions? options = null) => await (await browser.NewContextAsync(options ?? new())).NewPageAsync();

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }
}
