using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(EpisodePlanner.Browser.Tests.Chromium))]

namespace EpisodePlanner.Browser.Tests;

/// <summary>
/// The Chromium of the machine, started once. Where there is none, tests are skipped with a reason; on CI they fail.
/// </summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>The browser; the test is skipped, or fails on CI, where there is none.</summary>
    public IBrowser Browser
    {
        get
        {
            Assert.SkipWhen(browser is null && !OnCi, "No Chromium is installed: as root on Debian, apt-get install chromium.");
            return browser ?? throw new InvalidOperationException("No Chromium is installed, and CI skips nothing.");
        }
    }

    private static bool OnCi => string.Equals(Environment.GetEnvironmentVariable("CI"), "true", StringComparison.OrdinalIgnoreCase);

    public async ValueTask InitializeAsync()
    {
        if (Array.Find(Places, File.Exists) is { } path)
        {
            playwright = await Playwright.CreateAsync();
            browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = Arguments });
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }
}
