using System.Globalization;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Web;

namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>How fast pages are made, sent and seen, and how heavy they are.</summary>
internal sealed class PagesBenchmark : IBenchmark
{
    private static readonly IFormatProvider Plain = CultureInfo.InvariantCulture;

    public string Name => "pages";

    public string Usage =>
        "pages [--tasks 1000] [--seed 1] [--visits 60]: every page from the server in this process on loopback and SQLite, "
        + "and in Chromium where there is one";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--tasks", "--seed", "--visits");
        Measure(options, page).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task Measure(Options options, TextWriter page)
    {
        await using var planner = await PlannerUnderTest.Start(options.Number("--tasks", 1_000), options.Number("--seed", 1));
        var run = new PagesRun(planner);
        var table = new Table("page", "p50, ms", "p95, ms", "first visit, kB", "HTML, kB", "first paint, ms");
        await using var chrome = await Chrome.Start();
        await run.Plan();
        foreach (var (name, path) in DeskPages.All)
        {
            var (median, late) = await run.Served(path, options.Number("--visits", 60));
            var (visit, html) = await run.FirstVisit(path);
            var paint = chrome is null ? "no Chromium" : Figure(await run.FirstPaint(chrome, path));
            table.Add(name, Figure(median), Figure(late), Kilobytes(visit), Kilobytes(html), paint);
        }

        table.Add("goal", "", "≤ 60", "≤ 150", "", "≤ 1000");
        table.Print(page);
        page.WriteLine();
        await Others(run, page);
    }

    private static async Task Others(PagesRun run, TextWriter page)
    {
        var table = new Table("what", "figure", "goal");
        var (saved, shown) = await run.ChangedTask(DeskPages.Series);
        table.Add("a task's form sent, to the new plan on its series' page", $"{Figure(shown)} ms", "≤ 150 ms");
        table.Add("  of it until it is saved", $"{Figure(saved)} ms", "");
        table.Add("the same, then the first page", $"{Figure((await run.ChangedTask("")).Shown)} ms", "≤ 150 ms");
        var (drawn, blocks) = BenchDrawing.Measure();
        table.Add(string.Create(Plain, $"Bench drawn, {blocks} blocks"), $"{Figure(drawn)} ms", "≤ 20 ms");
        table.Add("own style, script and mark, compressed", $"{Kilobytes(await run.OwnFiles())} kB", "≤ 60 kB");
        table.Print(page);
    }

    private static string Figure(TimeSpan time) => string.Create(Plain, $"{time.TotalMilliseconds:0.0}");

    private static string Kilobytes(long bytes) => string.Create(Plain, $"{bytes / 1_000.0:0.0}");
}
