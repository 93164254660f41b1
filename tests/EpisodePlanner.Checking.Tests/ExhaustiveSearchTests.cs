using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class ExhaustiveSearchTests
{
    [Fact]
    public void Best_TwoJobsOfOnePerson_ShortOneFirst()
    {
        var input = Input(Attended("Long", 6, Ann), Attended("Short", 2, Ann)) with { Horizon = 12 };
        var found = ExhaustiveSearch.Best(Schedule(input, [], []).Problem, Finishes);
        Assert.Equal([0 + 2 + 8], found.Best);
        Assert.Equal(0, found.Schedule!.Start(1));
        Assert.True(found.IsComplete);
    }

    [Fact]
    public void Best_WorkThatPauses_GoesAroundAFixedOne()
    {
        var late = Attended("Fixed", 2, Ann) with { NotBefore = 2, MinimumBlock = 2 };
        var input = Input(Attended("Long", 6, Ann), late) with { Horizon = 14 };
        var found = ExhaustiveSearch.Best(Schedule(input, [], []).Problem, s => [s.Finish(1), s.Finish(0)]);
        Assert.Equal([4, 8], found.Best);
        Assert.Equal(2, found.Schedule!.Parts(0).Length);
    }

    [Fact]
    public void Best_StageThatNeverFits_IsLeftOutWithThoseThatWait()
    {
        var input = Input(Attended("Never", 13, Ann), Attended("After", 1, Ann), Attended("Free", 1, Ann)) with
        {
            Horizon = 12,
            Links = [new BenchLink(0, 1, LinkKind.TogetherStart)],
        };
        var found = ExhaustiveSearch.Best(Schedule(input, [], [], []).Problem, Finishes);
        Assert.Equal(2, found.Unplaced);
        Assert.True(found.Schedule!.IsPlaced(2));
    }

    [Fact]
    public void Best_OverItsLimit_SaysSo()
    {
        var input = Input(Attended("One", 1, Ann), Attended("Two", 1, Bob));
        Assert.False(ExhaustiveSearch.Best(Schedule(input, [], []).Problem, Finishes, limit: 10).IsComplete);
    }

    [Fact]
    public void Best_OnTinyProblems_IsFeasibleAndNeverBeaten()
    {
        var complete = 0;
        for (var seed = 0UL; seed < 120; seed++)
        {
            var problem = RandomProblems.Tiny(seed);
            var found = ExhaustiveSearch.Best(problem, Checked, floor: Finishes, limit: 20_000);
            complete += found.IsComplete ? 1 : 0;
            for (var again = 0UL; found.IsComplete && again < 20; again++)
                AssertNotBeaten(found, RandomSchedules.Create(problem, again), seed);
        }

        Assert.True(complete > 80, $"Only {complete} searches were complete.");
    }

    private static void AssertNotBeaten(ExhaustiveResult found, BenchSchedule other, ulong seed)
    {
        var unplaced = other.Problem.Stages.Count - other.Order.Count;
        Assert.True(unplaced >= found.Unplaced, $"Seed {seed}: {found.Unplaced} unplaced instead of {unplaced}.");
        if (unplaced == found.Unplaced)
            Assert.True(Finishes(other)[0] >= found.Best[0], $"Seed {seed}: {found.Best[0]} is beaten by {Finishes(other)[0]}.");
    }

    private static long[] Checked(BenchSchedule schedule)
    {
        Assert.Empty(ScheduleChecker.Check(schedule));
        return Finishes(schedule);
    }

    private static long[] Finishes(BenchSchedule schedule) => [schedule.Order.Sum(stage => (long)schedule.Finish(stage))];
}
