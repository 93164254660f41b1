using System.Diagnostics;
using System.Globalization;
using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Benchmarks.Psplib;

/// <summary>How many random lists a second the packed kernel decodes on one core, problem after problem.</summary>
internal sealed class DecodeBenchmark : IBenchmark
{
    private const int ListsEach = 64;

    public string Name => "psplib-decode";

    public string Usage => "psplib-decode DIR BEST.csv [--seconds 5] [--seed 1] [--every 10]   random lists decoded a second, one core";

    public int Run(Options options, TextWriter page)
    {
        options.OnlyOptions("--seconds", "--seed", "--every");
        if (options.Words.Count != 2)
        {
            throw new UsageException("psplib-decode takes a folder and a table.");
        }

        var cases = PsplibCase.Read(options.Words[0], options.Words[1], options.Number("--every", 10));
        var seed = (ulong)options.Number("--seed", 1);
        var loads = cases.Select(each => new Load(each.Problem, seed)).ToList();
        var (rate, busy) = Rate(loads, TimeSpan.FromSeconds(options.Amount("--seconds", 5)));
        page.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Path.GetFileName(Path.TrimEndingDirectorySeparator(options.Words[0]))}: {cases.Count} instances, {ListsEach} random lists each, {rate:N0} schedules a second, {busy:N0} a second of processor time"));
        return loads.All(load => load.IsSound()) ? 0 : 1;
    }

    /// <summary>Schedules a second, and a second of processor time; the first half of the time warms up.</summary>
    private static (double Wall, double Busy) Rate(List<Load> loads, TimeSpan time)
    {
        var (decoded, clock, busyBefore) = (0L, Stopwatch.StartNew(), TimeSpan.Zero);
        var isWarm = false;
        while (!isWarm || clock.Elapsed < time / 2)
        {
            foreach (var load in loads)
            {
                decoded += load.DecodeAll();
            }

            if (!isWarm && clock.Elapsed > time / 2)
            {
                (decoded, isWarm, busyBefore) = (0, true, Environment.CpuUsage.UserTime);
                clock.Restart();
            }
        }

        return (decoded / clock.Elapsed.TotalSeconds, decoded / (Environment.CpuUsage.UserTime - busyBefore).TotalSeconds);
    }

    /// <summary>A problem and the lists drawn for it.</summary>
    private sealed class Load(PackedProblem problem, ulong seed)
    {
        private readonly PackedGenerator generator = new(problem);
        private readonly int[][] lists = Draw(problem, new Dice(seed));

        public int DecodeAll()
        {
            foreach (var list in lists)
            {
                generator.Generate(list);
            }

            return lists.Length;
        }

        public bool IsSound() => PackedChecker.Check(generator.ToSchedule()).Count == 0;

        private static int[][] Draw(PackedProblem problem, Dice dice) =>
            [.. Enumerable.Range(0, ListsEach).Select(_ => RandomPlainProblems.Order(problem, dice))];
    }
}
