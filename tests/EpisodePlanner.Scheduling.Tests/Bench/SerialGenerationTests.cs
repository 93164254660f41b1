using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Causes;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// Random problems of every kind of stage, held against the independent checker. Source: properties of the definitions
/// in the documentation of the problem, no outside numbers.
/// </summary>
public sealed class SerialGenerationTests
{
    private const ulong Problems = 3_000;

    [Fact]
    public void Run_RandomProblems_GivesFeasibleSchedules()
    {
        for (ulong seed = 1; seed <= Problems; seed++)
        {
            var schedule = Best(RandomProblems.Create(seed), schedules: 12).Schedule;
            var wrong = ScheduleChecker.Check(schedule);
            Assert.True(wrong.Count == 0, $"Seed {seed}: {string.Join(" | ", wrong)}");
        }
    }

    [Fact]
    public void Explain_RandomProblems_EveryCauseCanBeRelaxed()
    {
        var failures = new List<string>();
        for (ulong seed = 1; seed <= Problems; seed++)
        {
            var schedule = Best(RandomProblems.Create(seed), schedules: 3).Schedule;
            var causes = new CauseFinder(schedule);
            foreach (var stage in schedule.Order)
            {
                var cause = causes.Explain(stage);
                if (CauseChecker.Check(schedule, stage, cause) is { } wrong)
                {
                    failures.Add($"Seed {seed}, stage {stage}: {cause.Cause} + [{string.Join(", ", cause.CoBlockers)}]: {wrong}");
                }
            }
        }

        Assert.True(failures.Count == 0, $"{failures.Count}: {string.Join(Environment.NewLine, failures.Take(10))}");
    }

    [Fact]
    public void Run_RandomProblems_NoStageCouldStartEarlier()
    {
        for (ulong seed = 1; seed <= Problems; seed++)
        {
            var schedule = Best(WithoutSittings(RandomProblems.Create(seed)), schedules: 2).Schedule;
            var early = schedule.Order
                .Where(stage => !FinishIsHeld(schedule.Problem, stage) && CauseChecker.CouldStartEarlier(schedule, stage))
                .ToList();
            Assert.True(early.Count == 0, $"Seed {seed}: stages {string.Join(", ", early)}");
        }
    }

    [Fact]
    public void Run_RandomProblems_GreatestLagsAreKeptAndTold()
    {
        var (moved, kept, unplaced) = (0, 0, 0);
        for (ulong seed = 1; seed <= Problems / 3; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var (with, without) = (Best(problem, 3).Schedule, Best(RandomProblems.WithoutGreatestLags(problem), 3).Schedule);
            var causes = new CauseFinder(with);
            moved += with.Order.Count(stage => causes.Explain(stage).Cause.Kind == CauseKind.GreatestLag);
            kept += problem.Links.Count(link => link.AtMost is not null && with.IsPlaced(link.To));
            unplaced += without.Order.Count - with.Order.Count;
        }

        // The checker says in the first test that none is broken; here, that the test means something.
        TestContext.Current.TestOutputHelper?.WriteLine($"{kept} greatest lags kept, {moved} stages later for it, {unplaced} more unplaced.");
        Assert.True(moved > 100 && kept > 500, $"{kept} kept, {moved} moved");
    }

    [Fact]
    public void Run_TinyProblems_IsNeverBetterThanExhaustiveSearch()
    {
        for (ulong seed = 1; seed <= 200; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            var objective = new Makespan();
            var found = Best(problem, schedules: 40);
            var best = ExhaustiveSearch.Best(problem, schedule => Row(objective, schedule), limit: 300_000);
            if (!best.IsComplete)
            {
                continue;
            }

            Assert.True(found.Row.AsSpan().SequenceCompareTo(best.Best) >= 0, $"Seed {seed}: {string.Join(",", found.Row)} beats {string.Join(",", best.Best)}");
        }
    }

    /// <summary>The same without setting up and tidying: a sitting opened later can save an earlier stage its setting up.</summary>
    private static BenchProblem WithoutSittings(BenchProblem problem)
    {
        var input = new BenchInput
        {
            Horizon = problem.Horizon,
            Presence = problem.Presence,
            Stations = [.. problem.Stations.Select(station => station with { SetUpMinutes = 0, TidyMinutes = 0 })],
            Limits = problem.Limits,
            Stages = problem.Stages,
            Links = problem.Links,
        };
        return Assert.IsType<BenchProblemResult.Sound>(BenchProblem.Create(input)).Problem;
    }

    /// <summary>
    /// A stage whose finish is held starts as late as that allows; a run could start earlier and wait on the machine, and
    /// work in pieces that what is placed later has spread out. What must follow soon can come to stand sooner than the
    /// stage was asked to be ready for; that is tried again, but not for ever.
    /// </summary>
    private static bool FinishIsHeld(BenchProblem problem, int stage) =>
        problem.Links.Any(link => (link.To == stage && link.Kind is LinkKind.TogetherFinish or LinkKind.StartToFinish)
            || (link.AtMost is not null && (link.From == stage || problem.Stages[link.From].GluedTo == stage)));

    private static SearchResult Best(BenchProblem problem, int schedules) =>
        BenchSearch.Run(problem, new Makespan(), new SearchBudget(schedules));

    private static long[] Row(Makespan objective, BenchSchedule schedule)
    {
        var stages = Enumerable.Range(0, schedule.Problem.Stages.Count).ToArray();
        var row = new long[objective.Parts];
        objective.Evaluate(
            stages.Select(s => schedule.IsPlaced(s) ? schedule.Start(s) : -1).ToArray(),
            stages.Select(s => schedule.IsPlaced(s) ? schedule.Finish(s) : -1).ToArray(),
            row);
        return row;
    }
}
