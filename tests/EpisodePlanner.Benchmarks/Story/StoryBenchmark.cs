using System.Globalization;
using System.Runtime.InteropServices;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Benchmarks.Story;

/// <summary>How long the first full answer about cuts and slots takes, and what a longer search wins over it.</summary>
internal sealed class StoryBenchmark : IBenchmark
{
    private const double GreatestExponent = 1.3;
    private const double GoalMilliseconds = 300;
    private const double GoalWorse = 0.03;
    private const int GoalTasks = 1_000;
    private const int PromiseDays = 56;

    public string Name => "story";

    public string Usage => "story [--sizes 250,500,1000,2000] [--seed 1] [--longer 60]   cuts and slots of generated workshops, and what so many seconds win";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--sizes", "--seed", "--longer");
        var sizes = options.Numbers("--sizes", [250, 500, 1_000, 2_000]);
        var (seed, longer) = (options.Number("--seed", 1), options.Number("--longer", 60));
        page.WriteLine($"story, seed {seed}: {RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores");
        page.WriteLine($"The workshops of the entry scale, nothing cut yet, a slot each Friday, promise {PromiseDays} days.");
        page.WriteLine();
        var table = new Table(["tasks", "milestones", "first answer ms", "plans", "silence now", "first answer", $"after {longer} s", "worse by"]);
        var times = new List<double>();
        foreach (var size in sizes)
        {
            var plan = Planner.Make(new PlanRequest(Workshop(size, seed), GeneratedWorkshop.PlannedAt));
            var (median, answer) = Stopwatching.Of(() => StoryAnswer.Of(plan));
            times.Add(median.TotalMilliseconds);
            var best = Longer(plan, TimeSpan.FromSeconds(longer));
            table.Add(
                Text(size),
                Text(plan.Request.Workshop.Series.Sum(series => series.Milestones.Count)),
                Text((long)median.TotalMilliseconds),
                Text(answer.Made),
                Text(answer.Now.Silence),
                Says(answer.Then),
                $"{Says(best.Then)} ({Text(best.Made)} plans)",
                Worse(answer.Then, best.Then));
        }

        table.Print(page);
        page.WriteLine(Verdict(sizes, times));
        return 0;
    }

    private static Workshop Workshop(int tasks, int seed)
    {
        var made = GeneratedWorkshop.Make(tasks, seed);
        return made with
        {
            Episodes = [],
            Settings = made.Settings with { SeriesPromiseDays = PromiseDays },
            SlotRules = [made.SlotRules.First() with { Rule = "FREQ=WEEKLY;BYDAY=FR" }],
        };
    }

    /// <summary>The same with as many plans as time allows; the first answer is among them.</summary>
    private static StoryAnswer Longer(Plan plan, TimeSpan time)
    {
        using var stop = new CancellationTokenSource(time);
        return StoryAnswer.Of(plan, int.MaxValue, stop: stop.Token);
    }

    private static string Says(StoryWeights weights) => weights.LateMinutes == 0 && weights.Unpublished == 0
        ? Text(weights.Silence)
        : $"{Text(weights.Silence)}, {Text(weights.LateMinutes)} min late, {weights.Unpublished} without a slot";

    private static string Worse(StoryWeights first, StoryWeights best) => best.Silence == 0
        ? Text(first.Silence)
        : (((double)first.Silence / best.Silence) - 1).ToString("0.0 %", CultureInfo.InvariantCulture)
            + (first.Silence <= best.Silence * (1 + GoalWorse) ? " kept" : " missed");

    private static string Verdict(int[] sizes, List<double> times)
    {
        var exponent = sizes.Length < 2 ? double.NaN : Math.Log(times[^1] / times[^2]) / Math.Log((double)sizes[^1] / sizes[^2]);
        var at = Array.IndexOf(sizes, GoalTasks);
        var time = at < 0 ? "" : $"First answer at {Text(GoalTasks)} tasks ≤ {GoalMilliseconds} ms: {(times[at] <= GoalMilliseconds ? "kept" : "missed")}. ";
        return double.IsNaN(exponent)
            ? time
            : $"{time}Growth between the two largest {exponent.ToString("0.00", CultureInfo.InvariantCulture)} (goal ≤ {GreatestExponent}); worse by at most {GoalWorse:P0} is the goal.";
    }

    private static string Text(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
