using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Benchmarks.Remedies;

/// <summary>How long ways out of a silence take until the first is told, until all single ones are tried, and a supposition.</summary>
internal sealed class RemediesBenchmark : IBenchmark
{
    private const double GreatestExponent = 1.3;
    private const double GoalFirst = 100;
    private const double GoalSingles = 500;
    private const double GoalSuppose = 150;
    private const int GoalTasks = 1_000;
    private const int PromiseDays = 14;
    private const int DaysAway = 7;

    public string Name => "remedies";

    public string Usage => "remedies [--sizes 250,500,1000,2000] [--seed 1] [--times 5]   ways out of the first silence of generated workshops, and a supposition";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--sizes", "--seed", "--times");
        var sizes = options.Numbers("--sizes", [250, 500, 1_000, 2_000]);
        var (seed, times) = (options.Number("--seed", 1), options.Number("--times", 5));
        page.WriteLine($"remedies, seed {seed}, median of {times}: {RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores");
        page.WriteLine($"The workshops of the entry scale, promise {PromiseDays} days; the first silence beyond it.");
        page.WriteLine();
        var table = new Table(["tasks", "first shown ms", "singles ms", "all ms", "tried", "help", "suppose ms"]);
        var rows = sizes.Select(size => Measure(size, seed, times)).ToList();
        rows.ForEach(row => table.Add(
            Text(row.Tasks), Text(row.First), Text(row.Singles), Text(row.All), Text(row.Tried), Text(row.Helping), Text(row.Suppose)));
        table.Print(page);
        page.WriteLine(Verdict(rows));
        return 0;
    }

    private static Row Measure(int size, int seed, int times)
    {
        var workshop = GeneratedWorkshop.Make(size, seed);
        workshop = workshop with { Settings = workshop.Settings with { SeriesPromiseDays = PromiseDays } };
        var plan = Planner.Make(new PlanRequest(workshop, GeneratedWorkshop.PlannedAt));
        var series = SilencesAhead.Of(plan)[0].Series;
        var runs = Enumerable.Range(0, times + 1).Select(_ => Timed(plan, series)).Skip(1).ToList();
        var (suppose, _) = Stopwatching.Of(() => Suppose(plan));
        return new Row(
            size,
            Median(runs.Select(run => run.First)),
            Median(runs.Select(run => run.Singles)),
            Median(runs.Select(run => run.All)),
            runs[0].Tried,
            runs[0].Helping,
            suppose.TotalMilliseconds);
    }

    private static Times Timed(Plan plan, Id series)
    {
        var clock = Stopwatch.StartNew();
        var (first, singles, gate) = (0.0, 0.0, new Lock());
        var found = new Telling<Remedy>(_ =>
        {
            lock (gate)
            {
                first = first == 0 ? clock.Elapsed.TotalMilliseconds : first;
            }
        });

        // The last step below the whole is the last single way out.
        var progress = new Telling<double>(share => singles = share < 1 ? clock.Elapsed.TotalMilliseconds : singles);
        var about = SilenceRemedies.Of(plan, series, progress, found)!;
        return new Times(first, singles, clock.Elapsed.TotalMilliseconds, about.Helping.Count + about.InVain.Count, about.Helping.Count);
    }

    private static PlanDifference Suppose(Plan plan)
    {
        var person = Suppositions.PeopleOf(plan.Request.Workshop).First();
        var away = Suppositions.Away(plan.Request.Workshop, person.Id, plan.Now.Date.PlusDays(1), DaysAway)!;
        var difference = new PlanDifference(plan, Replanning.After(plan, away.Change)!);
        return difference.IsSame ? throw new InvalidOperationException("A week away must make a difference.") : difference;
    }

    private static double Median(IEnumerable<double> values) => values.Order().ElementAt(values.Count() / 2);

    private static string Verdict(List<Row> rows)
    {
        var goals = rows.Find(row => row.Tasks == GoalTasks) is { } at
            ? $"At {Text(GoalTasks)} tasks: first ≤ {GoalFirst} ms {Kept(at.First <= GoalFirst)}, singles ≤ {GoalSingles} ms {Kept(at.Singles <= GoalSingles)}, "
                + $"suppose ≤ {GoalSuppose} ms {Kept(at.Suppose <= GoalSuppose)}. "
            : "";
        if (rows.Count < 2)
        {
            return goals;
        }

        var exponent = Math.Log(rows[^1].Singles / rows[^2].Singles) / Math.Log((double)rows[^1].Tasks / rows[^2].Tasks);
        return $"{goals}Growth of the singles between the two largest {exponent.ToString("0.00", CultureInfo.InvariantCulture)} (goal ≤ {GreatestExponent}).";
    }

    private static string Kept(bool isKept) => isKept ? "kept" : "missed";

    private static string Text(double number) => number.ToString("N0", CultureInfo.InvariantCulture);

    private sealed record Times(double First, double Singles, double All, int Tried, int Helping);

    private sealed record Row(int Tasks, double First, double Singles, double All, int Tried, int Helping, double Suppose);

    /// <summary>Tells at once, on the thread that reports.</summary>
    private sealed class Telling<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}
