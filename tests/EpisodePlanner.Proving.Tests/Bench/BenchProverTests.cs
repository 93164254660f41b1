using EpisodePlanner.Checking;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Bench;

public sealed class BenchProverTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    // Property: no schedule finishes sooner than a bound, whoever made it. Weeks of days of an hour, up to twelve stages.
    [Fact]
    public void LeastFinish_LargerProblems_NeverExceedsAnySchedule()
    {
        for (var seed = 1UL; seed <= 60; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var stage = (int)(seed % (ulong)problem.Stages.Count);
            var (first, best) = (Search(problem, stage, 1), Search(problem, stage, 400));
            if (first.IsPlaced(stage) && best.IsPlaced(stage))
            {
                var proof = BenchProver.LeastFinish(first, [stage], ProofLimits.OfWork(0.3), stop: Stop);
                Assert.True(proof.Bound <= best.Finish(stage), $"Seed {seed}: {proof.Bound} is above {best.Finish(stage)}.");
            }
        }
    }

    // Property: a schedule that keeps the greatest lags is one that may break them; oracle: every schedule there is.
    [Fact]
    public void LeastFinish_WithGreatestLags_IsNeverAboveTheBestThatKeepsThem()
    {
        var compared = 0;
        for (var seed = 1UL; seed <= 300; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            if (!problem.Links.Any(link => link.AtMost is not null))
            {
                continue;
            }

            var best = ExhaustiveSearch.Best(problem, s => [ScheduleChecker.AtMostBroken(s).Count, s.End], limit: 20_000);
            if (best is { IsComplete: true, Unplaced: 0, Best: [0, var end] })
            {
                int[] all = [.. Enumerable.Range(0, problem.Stages.Count)];
                var usual = BenchProver.LeastFinish(best.Schedule!, all, ProofLimits.OfWork(5), stop: Stop);
                var kept = BenchProver.LeastFinish(
                    best.Schedule!, all, ProofLimits.OfWork(5), new BoundRules { KeepsGreatestLags = true }, stop: Stop);
                Assert.InRange(kept.Bound, usual.Bound, end);
                compared++;
            }
        }

        Assert.True(compared >= 10, $"Only {compared} problems were compared.");
    }

    // Property: with as many of a station as anyone likes, nothing is finished later.
    [Fact]
    public void LeastFinish_RelaxedStations_NeverRaiseTheBound()
    {
        for (var seed = 1UL; seed <= 60; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            int[] all = [.. Enumerable.Range(0, problem.Stages.Count)];
            var known = Search(problem, 0, 20);
            if (all.All(known.IsPlaced))
            {
                var usual = BenchProver.LeastFinish(known, all, ProofLimits.OfWork(5), stop: Stop).Bound;
                var rules = new BoundRules { RelaxedStations = Enumerable.Range(0, problem.Stations.Count).ToHashSet() };
                Assert.InRange(BenchProver.LeastFinish(known, all, ProofLimits.OfWork(5), rules, stop: Stop).Bound, 0, usual);
            }
        }
    }

    [Fact]
    public void LeastFinish_NobodyEverThere_IsNever()
    {
        var problem = Assert.IsType<BenchProblemResult.Sound>(BenchProblem.Create(new BenchInput
        {
            Horizon = 1000,
            Presence = IntervalCalendar.Never,
            Stations = [new Station("Ann", StationKind.Person, IntervalCalendar.Never)],
            Stages = [new BenchStage { Name = "Weld", Kind = StageKind.Attended, Minutes = 5, Modes = [new StageMode { Stations = [0] }] }],
        })).Problem;

        var proof = BenchProver.LeastFinish(Search(problem, 0, 1), [0], ProofLimits.OfWork(1), stop: Stop);

        Assert.Equal(new StageBound(BenchProver.Never, null), proof);
    }

    private static BenchSchedule Search(BenchProblem problem, int stage, int schedules) =>
        BenchSearch.Run(problem, new LastFinish([stage]), new SearchBudget(schedules), stop: Stop).Schedule;
}
