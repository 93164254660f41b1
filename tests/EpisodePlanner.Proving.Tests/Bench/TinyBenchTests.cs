using EpisodePlanner.Checking;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Bench;

/// <summary>
/// Tiny bench problems with calendars, pauses, held machines, touches, one-of sets and lags. Oracle: every schedule that
/// there is, by the checking library's own rules.
/// </summary>
public sealed class TinyBenchTests
{
    private const int Problems = 250;
    private const long MostLooks = 40_000;

    [Fact]
    public void LeastFinish_OfAllStages_IsNeverAboveTheBestSchedule()
    {
        var tally = new Tally();
        for (var seed = 1UL; seed <= Problems; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            Compare(tally, seed, problem, [.. Enumerable.Range(0, problem.Stages.Count)]);
        }

        tally.MostAreClaimed();
    }

    [Fact]
    public void LeastFinish_OfOneStage_IsNeverAboveTheBestSchedule()
    {
        var tally = new Tally();
        for (var seed = 1001UL; seed <= 1000 + Problems; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            Compare(tally, seed, problem, [(int)(seed % (ulong)problem.Stages.Count)]);
        }

        tally.MostAreClaimed();
    }

    private static void Compare(Tally tally, ulong seed, BenchProblem problem, IReadOnlyList<int> targets)
    {
        var known = BenchSearch.Run(
            problem, new LastFinish(targets), new SearchBudget(60), stop: TestContext.Current.CancellationToken).Schedule;
        if (!targets.All(known.IsPlaced))
        {
            return;
        }

        var best = ExhaustiveSearch.Best(problem, schedule => [End(schedule, targets)], limit: MostLooks);
        if (!best.IsComplete || !targets.All(best.Schedule!.IsPlaced))
        {
            return;
        }

        var proof = BenchProver.LeastFinish(known, targets, ProofLimits.OfWork(5), stop: TestContext.Current.CancellationToken);
        Assert.True(proof.Bound <= best.Best[0], $"Seed {seed}: the bound is {proof.Bound}, and {best.Best[0]} can be reached.");
        tally.Add(proof, best.Best[0]);
    }

    private static long End(BenchSchedule schedule, IReadOnlyList<int> targets) =>
        targets.Max(target => schedule.IsPlaced(target) ? schedule.Finish(target) : schedule.Problem.Horizon + 1);

    private sealed class Tally
    {
        private int all;
        private int tight;
        private int claimed;

        public void Add(StageBound proof, long best)
        {
            all++;
            tight += proof.Bound == best ? 1 : 0;
            claimed += proof.IsOptimal ? 1 : 0;
        }

        /// <summary>A bound that is never reached would prove nothing; our own goal is half of them.</summary>
        public void MostAreClaimed()
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{all} problems: {tight} bounds are the optimum, {claimed} optima are claimed.");
            Assert.True(all > Problems / 4, $"Only {all} searches were complete.");
            Assert.True(claimed * 2 >= all, $"{claimed} of {all} are claimed.");
        }
    }
}
