using System.Globalization;
using EpisodePlanner.Benchmarks.Measuring;

namespace EpisodePlanner.Benchmarks.Web;

/// <summary>How fast the server answers, against what a bare server could.</summary>
internal sealed class WebBenchmark : IBenchmark
{
    private static readonly IFormatProvider Plain = CultureInfo.InvariantCulture;

    public string Name => "web";

    public string Usage =>
        "web [--tasks 1000] [--seed 1] [--connections 4] [--seconds 3] [--app FILE]: the API in this process on loopback and SQLite; "
        + "with --app the start of a published EpisodePlanner.Web.dll too";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--tasks", "--seed", "--connections", "--seconds", "--app");
        Measure(options, page).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task Measure(Options options, TextWriter page)
    {
        var table = new Table("what", "figure", "goal");
        await using (var planner = await PlannerUnderTest.Start(options.Number("--tasks", 1_000), options.Number("--seed", 1)))
        {
            var seconds = TimeSpan.FromSeconds(options.Number("--seconds", 3));
            await Measure(new WebRun(planner, options.Number("--connections", 4), seconds), table);
        }

        if (options.Text("--app") is { } app)
        {
            table.Add("start to first answer, published", Milliseconds(await WebRun.StartToAnswer(Path.GetFullPath(app))), "≤ 2000 ms");
        }

        table.Print(page);
    }

    private static async Task Measure(WebRun run, Table table)
    {
        var (plan, bare, unmodified, bytes) = await run.Throughput();
        table.Add($"plan, {bytes / 1e6:0.00} MB", string.Create(Plain, $"{plan:0} /s"), "");
        table.Add("bare server, the same bytes", string.Create(Plain, $"{bare:0} /s"), "");
        table.Add("plan against bare", string.Create(Plain, $"{plan / bare:0.00}"), "≥ 0.7");
        table.Add("plan, 304", string.Create(Plain, $"{unmodified:0} /s"), "");
        var (dates, change) = await run.ChangedTask("?trials=false");
        table.Add("changed task to new plan", Milliseconds(dates), "≤ 120 ms");
        table.Add("  of it the change", Milliseconds(change), "");
        table.Add("changed task to new plan with its trials", Milliseconds((await run.ChangedTask("")).Whole), "");
        table.Add("cold load", Milliseconds(await run.ColdLoad()), "≤ 15 ms");
        table.Add("batch of 1,000 changes", Milliseconds(await run.Batch()), "≤ 500 ms");
    }

    private static string Milliseconds(TimeSpan time) => string.Create(Plain, $"{time.TotalMilliseconds:0.0} ms");
}
