using System.Globalization;
using System.Runtime.InteropServices;
using EpisodePlanner.Benchmarks.Measuring;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>How the time of each step grows with the size of the workshop.</summary>
internal sealed class ScaleBenchmark : IBenchmark
{
    private const double GreatestExponent = 1.2;

    /// <summary>A workshop of so many tasks is measured first and thrown away, so that all code is compiled for speed.</summary>
    private const int WarmUpTasks = 200;

    /// <summary>Goals for 1,000 tasks, milliseconds.</summary>
    private static readonly Dictionary<string, double> Goals = new() { ["one bench schedule"] = 5, ["whole plan"] = 50 };

    public string Name => "scale";

    public string Usage => "scale [--sizes 100,1000,10000] [--seed 1]   time of each step in generated workshops";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--sizes", "--seed");
        var sizes = options.Numbers("--sizes", [100, 1_000, 10_000]);
        var seed = options.Number("--seed", 1);
        page.WriteLine($"scale, seed {seed}: {RuntimeInformation.FrameworkDescription}, {BuildKind}, {Environment.ProcessorCount} cores");
        page.WriteLine(WorkshopMix.Says);
        page.WriteLine();

        ScaleRun.Measure(WarmUpTasks, seed);
        var runs = new List<ScaleRun>();
        foreach (var size in sizes)
        {
            var run = ScaleRun.Measure(size, seed);
            runs.Add(run);
            var verdict = run.Broken.Count == 0 ? "all keep every rule" : $"{run.Broken.Count} rules broken, such as: {run.Broken[0]}";
            page.WriteLine($"{Text(size)} tasks: {run.Says}.");
            foreach (var line in run.Engine)
            {
                page.WriteLine($"  {line}.");
            }

            page.WriteLine($"  {run.Checked} schedules checked independently: {verdict}.");
        }

        page.WriteLine();
        Tabulate(sizes, runs).Print(page);
        page.WriteLine("Milliseconds, medians after warm-up. Growth: the exponent between the two largest sizes.");
        return runs.All(run => run.Broken.Count == 0) ? 0 : 1;
    }

#if DEBUG
    private static string BuildKind => "Debug build, so the times mean little";
#else
    private static string BuildKind => "Release build";
#endif

    private static Table Tabulate(int[] sizes, List<ScaleRun> runs)
    {
        var table = new Table(["step", .. sizes.Select(Text), "growth", "goal: growth", "goal: 1,000"]);
        foreach (var step in ScaleRun.Steps)
        {
            var times = runs.Select(run => run.Times[step].TotalMilliseconds).ToList();
            var exponent = sizes.Length < 2 ? double.NaN : Math.Log(times[^1] / times[^2]) / Math.Log((double)sizes[^1] / sizes[^2]);
            table.Add(
            [
                step,
                .. times.Select(time => time.ToString(time < 10 ? "0.00" : "0", CultureInfo.InvariantCulture)),
                double.IsNaN(exponent) ? "" : exponent.ToString("0.00", CultureInfo.InvariantCulture),
                double.IsNaN(exponent) ? "" : Verdict(exponent, GreatestExponent),
                Goals.TryGetValue(step, out var goal) && Array.IndexOf(sizes, 1_000) is >= 0 and var at ? Verdict(times[at], goal) : "",
            ]);
        }

        return table;
    }

    private static string Verdict(double value, double goal) => $"≤ {goal.ToString(CultureInfo.InvariantCulture)} {(value <= goal ? "kept" : "missed")}";

    private static string Text(int number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
