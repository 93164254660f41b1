using System.Diagnostics;
using System.Globalization;
using EpisodePlanner.Checking;
using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>What the engine does in one workshop: stages a second, bytes a schedule, what a second of improvement wins.</summary>
internal static class EngineRun
{
    private const int Lists = 50;
    private const int FewSchedules = 300;
    private const int MoreSchedules = 500;

    private static readonly TimeSpan LeastTime = TimeSpan.FromSeconds(1);

    /// <summary>Lines for people; a wrong schedule adds to what is broken.</summary>
    public static IReadOnlyList<string> Measure(PlanRequest request, Plan first, List<string> broken) =>
        [Decoding(first.Schedule.Problem, broken), Allocating(request), Improving(request, first, broken)];

    /// <summary>Stages placed for each second of processor time, lists in random order.</summary>
    private static string Decoding(BenchProblem problem, List<string> broken)
    {
        var dice = new Dice(1);
        var lists = Enumerable.Range(0, Lists).Select(_ => dice.Shuffle(problem.Stages.Count)).ToList();
        var generator = new BenchGenerator(WorkshopNetwork.Of(problem));
        lists.ForEach(list => generator.Generate(list));
        var (begun, made) = (Used(), 0L);
        do
        {
            lists.ForEach(list => made += generator.Generate(list));
        }
        while (Used() - begun < LeastTime);

        var rate = made * problem.Stages.Count / (Used() - begun).TotalSeconds;
        broken.AddRange(ScheduleChecker.Check(generator.ToSchedule()));
        return $"random lists: {Text((long)rate)} stages a second of processor time (goal 1,000,000: {(rate >= 1e6 ? "kept" : "missed")})";
    }

    /// <summary>What a schedule more costs in memory, found from two budgets of one search.</summary>
    private static string Allocating(PlanRequest request)
    {
        long Allocated(int schedules)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            Planner.Make(request with { Schedules = schedules });
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Allocated(MoreSchedules);
        var bytes = Allocated(MoreSchedules) - Allocated(FewSchedules);
        return $"bytes allocated for {MoreSchedules - FewSchedules} schedules more: {Text(bytes)} (goal 0)";
    }

    private static string Improving(PlanRequest request, Plan first, List<string> broken)
    {
        using var stop = new CancellationTokenSource(LeastTime);
        var better = Planner.Make(request with { Schedules = int.MaxValue }, stop: stop.Token);
        broken.AddRange(ScheduleChecker.Check(better.Schedule));
        return $"a second of improvement, {better.Generated} schedules: late {Part(w => w.LateMinutes)} min, silence {Part(w => w.Silence)}, "
            + $"end {Part(w => w.EndMinute)} min";

        string Part(Func<PlanWeights, long> part) => $"{Text(part(first.Weights))} → {Text(part(better.Weights))}";
    }

    private static TimeSpan Used() => Process.GetCurrentProcess().TotalProcessorTime;

    private static string Text(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
