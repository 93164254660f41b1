using System.Globalization;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Web;
using Microsoft.Playwright;
using NodaTime;

namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>Takes the pictures of the README: pages of the demo at the evening it was written for, as Chromium shows them.</summary>
internal sealed class PicturesBenchmark : IBenchmark
{
    private static readonly Instant Evening = Instant.FromUtc(2026, 11, 25, 18, 0);

    /// <summary>With the further plans, however long they take.</summary>
    private const string WaitedFor = "?wait=true";

    private static readonly IReadOnlyList<Shot> Shots =
    [
        new("now", WaitedFor, 1_120, 800),
        new("now-dark", WaitedFor, 1_120, 800) { Theme = ColorScheme.Dark },
        new("now-phone", WaitedFor, 390, 844),
        new("now-print", WaitedFor, 780, 1_100) { IsPrinted = true },
        new("bench", "/bench?days=14", 1_120, 900),
        new("bench-phone", "/bench", 390, 844),
        new("silence", "/silence", 1_120, 900),
        new("silence-dark", "/silence", 1_120, 900) { Theme = ColorScheme.Dark },
        new("story", "/story", 1_120, 900),
        new("series", "/series/ferry", 1_120, 900),
        new("form", "/edit/tasks/print-motor-bell", 1_120, 900),
        new("letter", "/letter", 1_120, 700),
        new("letter-dark", "/letter", 1_120, 700) { Theme = ColorScheme.Dark },
    ];

    public string Name => "pictures";

    public string Usage => "pictures [--file demo-seed/harbour-shed.json] [--into docs/pictures]: the README's pictures, taken anew";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--file", "--into");
        return Take(
            options.Text("--file") ?? Path.Combine("demo-seed", "harbour-shed.json"),
            options.Text("--into") ?? Path.Combine("docs", "pictures"),
            page).GetAwaiter().GetResult();
    }

    private static async Task<int> Take(string file, string folder, TextWriter page)
    {
        await using var chrome = await Chrome.Start();
        if (chrome is null)
        {
            await page.WriteLineAsync("No Chromium is installed: as root on Debian, apt-get install chromium.");
            return 1;
        }

        await using var planner = await PlannerUnderTest.Start(await File.ReadAllBytesAsync(file), Evening);
        Directory.CreateDirectory(folder);
        var table = new Table("picture", "kB");
        foreach (var shot in Shots)
        {
            var png = await Take(shot, chrome, new Uri(planner.Client.BaseAddress!, planner.Desk + shot.Path));
            await File.WriteAllBytesAsync(Path.Combine(folder, $"{shot.Name}.png"), png);
            table.Add(shot.Name, (png.Length / 1_000).ToString(CultureInfo.InvariantCulture));
        }

        table.Print(page);
        return 0;
    }

    private static async Task<byte[]> Take(Shot shot, Chrome chrome, Uri address)
    {
        var page = await chrome.Page(new()
        {
            ViewportSize = new ViewportSize { Width = shot.Width, Height = shot.Height },
            ColorScheme = shot.Theme,
            ReducedMotion = ReducedMotion.Reduce,
        });
        if (shot.IsPrinted)
        {
            await page.EmulateMediaAsync(new() { Media = Media.Print });
        }

        await page.GotoAsync(address.ToString());
        var png = await page.ScreenshotAsync();
        await page.Context.CloseAsync();
        return png;
    }

    private sealed record Shot(string Name, string Path, int Width, int Height)
    {
        public ColorScheme Theme { get; init; } = ColorScheme.Light;

        public bool IsPrinted { get; init; }
    }
}
