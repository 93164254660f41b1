using System.Diagnostics;
using System.Globalization;
using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>How good the schedules of the packed kernel are on a folder of PSPLIB, and how fast they are made.</summary>
internal sealed class PsplibBenchmark : IBenchmark
{
    private static readonly TimeSpan BetweenProgress = TimeSpan.FromSeconds(5);

    public string Name => "psplib";

    public string Usage =>
        "psplib DIR BEST.csv (--schedules N | --seconds X) [--seed 1] [--threads 1] [--every 1] [--csv FILE]   "
        + "distance to the best known ends";

    public int Run(Options options, TextWriter page)
    {
        options.OnlyOptions("--schedules", "--seconds", "--seed", "--threads", "--every", "--csv");
        if (options.Words.Count != 2 || options.Has("--schedules") == options.Has("--seconds"))
        {
            throw new UsageException("psplib takes a folder, a table, and either --schedules or --seconds.");
        }

        var cases = PsplibCase.Read(options.Words[0], options.Words[1], options.Number("--every", 1));
        var (clock, busy) = (Stopwatch.StartNew(), Environment.CpuUsage.UserTime);
        var rows = Solve(cases, options);
        page.WriteLine(Summary(options, rows, clock.Elapsed, Environment.CpuUsage.UserTime - busy));
        if (options.Text("--csv") is { } file)
        {
            WriteTable(file, rows);
        }

        var broken = rows.Where(row => row.Broken.Count > 0).ToList();
        foreach (var row in broken)
        {
            page.WriteLine($"BROKEN {row.Known.File}: {string.Join(' ', row.Broken)}");
        }

        return broken.Count == 0 ? 0 : 1;
    }

    private static PsplibRow[] Solve(IReadOnlyList<PsplibCase> cases, Options options)
    {
        var rows = new PsplibRow[cases.Count];
        var (done, told) = (0, Stopwatch.StartNew());
        var gate = new Lock();
        var limits = new ParallelOptions { MaxDegreeOfParallelism = options.Number("--threads", 1) };
        Parallel.For(0, cases.Count, limits, i =>
        {
            rows[i] = Solve(cases[i], options);
            lock (gate)
            {
                done++;
                if (told.Elapsed > BetweenProgress)
                {
                    Console.Error.WriteLine($"  {done} of {cases.Count}");
                    told.Restart();
                }
            }
        });
        return rows;
    }

    private static PsplibRow Solve(PsplibCase each, Options options)
    {
        using var stop = new CancellationTokenSource();
        var schedules = options.Number("--schedules", int.MaxValue);
        if (options.Has("--seconds"))
        {
            stop.CancelAfter(TimeSpan.FromSeconds(options.Amount("--seconds", 1)));
        }

        var budget = new SearchBudget(schedules, (ulong)options.Number("--seed", 1));
        var found = PackedSearch.Run(each.Problem, new Makespan(), budget, stop: stop.Token);
        return new PsplibRow(each.Known, found.Schedule.End, found.Generated, PackedChecker.Check(found.Schedule));
    }

    private static string Summary(Options options, PsplibRow[] rows, TimeSpan wall, TimeSpan busy)
    {
        var generated = rows.Sum(row => (long)row.Generated);
        return string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(Path.TrimEndingDirectorySeparator(options.Words[0]))}: {rows.Length} instances, ")
            + string.Create(CultureInfo.InvariantCulture, $"above critical path {rows.Average(row => row.AboveCriticalPath):0.000} %, ")
            + string.Create(CultureInfo.InvariantCulture, $"above best known {rows.Average(row => row.AboveBestKnown):0.000} %, ")
            + string.Create(CultureInfo.InvariantCulture, $"{rows.Count(row => row.End == row.Known.Best)} equal the best known, ")
            + string.Create(CultureInfo.InvariantCulture, $"{generated:N0} schedules, {generated / wall.TotalSeconds:N0} a second, {wall.TotalSeconds:0.0} s, {busy.TotalSeconds:0.0} s of processor time");
    }

    private static void WriteTable(string file, PsplibRow[] rows)
    {
        using var writer = new StreamWriter(file);
        writer.WriteLine("file,cp_lb,best_ub,found,generated");
        foreach (var row in rows)
        {
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Known.File},{row.Known.CriticalPath},{row.Known.Best},{row.End},{row.Generated}"));
        }
    }
}
