using System.Globalization;
using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>
/// The packed kernel and a general solver side by side: the same problems, seconds and cores, one after the other.
/// </summary>
/// <remarks>
/// The table is ordered by the parameters that its problems were drawn with, so every so many of them are a stratified
/// sample. With several threads the solver uses them as it likes, and the kernel searches from as many seeds.
/// </remarks>
internal sealed class VersusBenchmark : IBenchmark
{
    private static readonly TimeSpan BetweenProgress = TimeSpan.FromSeconds(10);

    public string Name => "psplib-vs";

    public string Usage =>
        "psplib-vs DIR BEST.csv --seconds S [--every 5] [--threads 1]   the kernel and a general solver side by side";

    public int Run(Options options, TextWriter page)
    {
        options.OnlyOptions("--seconds", "--every", "--threads");
        if (options.Words.Count != 2 || !options.Has("--seconds"))
        {
            throw new UsageException("psplib-vs takes a folder, a table and --seconds.");
        }

        var (seconds, threads) = (options.Amount("--seconds", 1), options.Number("--threads", 1));
        var cases = PsplibCase.Read(options.Words[0], options.Words[1], options.Number("--every", 5));
        var folder = Path.GetFileName(Path.TrimEndingDirectorySeparator(options.Words[0]));
        page.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{folder}: {cases.Count} instances, {seconds} s each, {threads} cores for either side"));

        // What is compiled when it is first called is compiled before anything counts.
        _ = (Kernel(cases[0].Problem, 0.5, threads), SolverAlone.Solve(cases[0].Problem, 0.5, threads));
        var rows = Compare(cases, seconds, threads);
        var broken = Tell(page, "the kernel", [.. rows.Select(row => row.Ours)])
            + Tell(page, "the solver alone", [.. rows.Select(row => row.Theirs).OfType<PsplibRow>()]);
        Tally(page, rows);
        return broken == 0 ? 0 : 1;
    }

    private static List<(PsplibRow Ours, PsplibRow? Theirs)> Compare(IReadOnlyList<PsplibCase> cases, double seconds, int threads)
    {
        var rows = new List<(PsplibRow, PsplibRow?)>();
        var told = System.Diagnostics.Stopwatch.StartNew();
        foreach (var each in cases)
        {
            var ours = Row(each, Kernel(each.Problem, seconds, threads));
            var theirs = SolverAlone.Solve(each.Problem, seconds, threads) is { } found ? Row(each, found) : null;
            rows.Add((ours, theirs));
            if (told.Elapsed > BetweenProgress)
            {
                Console.Error.WriteLine($"  {rows.Count} of {cases.Count}");
                told.Restart();
            }
        }

        return rows;
    }

    private static PackedSchedule Kernel(PackedProblem problem, double seconds, int threads)
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var found = new PackedSchedule[threads];
        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => found[i] = PackedSearch
            .Run(problem, new Makespan(), new SearchBudget(int.MaxValue, (ulong)i + 1), stop: stop.Token).Schedule);
        return found.MinBy(schedule => schedule.End)!;
    }

    private static PsplibRow Row(PsplibCase each, PackedSchedule schedule) =>
        new(each.Known, schedule.End, 0, PackedChecker.Check(schedule));

    private static int Tell(TextWriter page, string side, IReadOnlyList<PsplibRow> rows)
    {
        page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {side}: {rows.Count} schedules, ")
            + string.Create(CultureInfo.InvariantCulture, $"above best known {rows.Average(row => row.AboveBestKnown):0.000} %, ")
            + string.Create(CultureInfo.InvariantCulture, $"above critical path {rows.Average(row => row.AboveCriticalPath):0.000} %, ")
            + string.Create(CultureInfo.InvariantCulture, $"{rows.Count(row => row.End == row.Known.Best)} equal the best known"));
        foreach (var row in rows.Where(row => row.Broken.Count > 0))
        {
            page.WriteLine($"  BROKEN {row.Known.File}: {string.Join(' ', row.Broken)}");
        }

        return rows.Count(row => row.Broken.Count > 0);
    }

    private static void Tally(TextWriter page, List<(PsplibRow Ours, PsplibRow? Theirs)> rows)
    {
        var both = rows.Where(row => row.Theirs is not null).ToList();
        var (ours, theirs) = (both.Average(row => row.Ours.AboveBestKnown), both.Average(row => row.Theirs!.AboveBestKnown));
        page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  where both have one: {ours:0.000} % against {theirs:0.000} %, ")
            + string.Create(CultureInfo.InvariantCulture, $"{ours / Math.Max(theirs, 1e-9):0.00} of the distance; ")
            + $"the kernel is shorter {both.Count(row => row.Ours.End < row.Theirs!.End)} times, longer {both.Count(row => row.Ours.End > row.Theirs!.End)} times");
    }
}
