using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Causes;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Source: what a search promises; no outside numbers.</summary>
public sealed class BenchSearchTests
{
    private static readonly BenchInput Two = Input(Work("Sand", 60, Ann), Work("Draw", 60, Ann));

    [Fact]
    public void Run_SameSeed_GivesTheSameSchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var first = Sound.Search(RandomProblems.Create(seed), schedules: 30, seed: seed);
            var again = Sound.Search(RandomProblems.Create(seed), schedules: 30, seed: seed);
            Assert.Equal((first.Rule, first.Generated), (again.Rule, again.Generated));
            Assert.Equal(first.Row, again.Row);
            Assert.Equal(first.Schedule.Order, again.Schedule.Order);
            Assert.Equal(PartsOf(first.Schedule), PartsOf(again.Schedule));
        }
    }

    [Fact]
    public void Run_BudgetOfOne_MakesOneSchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            Assert.Equal(1, Sound.Search(Sound.WithoutGreatestLags(RandomProblems.Create(seed))).Generated);
        }
    }

    [Fact]
    public void Run_LargerBudget_IsNeverWorse()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var (one, more) = (Sound.Search(problem, 1 + (int)(seed % 6)), Sound.Search(problem, 40));
            Assert.True(more.Row.AsSpan().SequenceCompareTo(one.Row.AsSpan()) <= 0, $"Seed {seed}: worse than {one.Generated}.");
        }
    }

    [Fact]
    public void Run_StoppedBefore_StillGivesASchedule()
    {
        var stop = new CancellationToken(true);
        var found = Sound.Checked(BenchSearch.Run(Sound.Problem(Two), new Makespan(), new SearchBudget(50), stop: stop));
        Assert.Equal(1, found.Generated);
        Assert.Equal(2, found.Schedule.Order.Count);
    }

    [Fact]
    public void Run_StoppedMeanwhile_GivesTheBestSoFar()
    {
        using var stop = new CancellationTokenSource();
        var shares = new Shares(share =>
        {
            if (share > 0.05)
            {
                stop.Cancel();
            }
        });
        var found = Sound.Checked(
            BenchSearch.Run(Sound.Problem(Two), new Makespan(), new SearchBudget(40), progress: shares, stop: stop.Token));
        Assert.Equal(3, found.Generated);
        Assert.Equal([1 / 40.0, 2 / 40.0, 3 / 40.0], shares.Told);
    }

    [Fact]
    public void Run_AcceptedOrder_IsTriedFirstAndKeptWhereNothingIsBetter()
    {
        var found = Sound.Search(Sound.Problem(Two), schedules: 50, accepted: [1, 0]);
        Assert.Equal("the accepted order", found.Rule);
        Assert.Equal((At(0, 19), At(0, 18)), (found.Schedule.Start(0), found.Schedule.Start(1)));
    }

    [Fact]
    public void Run_AcceptedOrderIsBeaten_TakesTheBetter()
    {
        var input = Input(Work("Sand", 60, Ann), Work("Glue", 60, Ann), Wait("Glue sets", 1200)) with { Links = [After(1, 2)] };
        var problem = Sound.Problem(input);
        Assert.Equal(At(0, 20) + 1200, Sound.Search(problem, accepted: [0, 1, 2]).Schedule.End);
        var found = Sound.Search(problem, schedules: 50, accepted: [0, 1, 2]);
        Assert.NotEqual("the accepted order", found.Rule);
        Assert.Equal(At(0, 19) + 1200, found.Schedule.End);
    }

    [Fact]
    public void Run_AcceptedOrderOfSome_PutsTheOthersBehind()
    {
        var input = Input(Work("Sand", 60, Ann), Work("Draw", 60, Ann), Work("Pack", 60, Ann));
        var schedule = Sound.Search(Sound.Problem(input), accepted: [2]).Schedule;
        Assert.Equal([At(0, 19), At(0, 20), At(0, 18)], Enumerable.Range(0, 3).Select(schedule.Start));
    }

    [Fact]
    public void Explain_AcceptedOrder_IsNamedAsTheCause()
    {
        var schedule = Sound.Search(Sound.Problem(Two), accepted: [1, 0]).Schedule;
        var expected = new Blocker(CauseKind.AcceptedOrder, Stage: 1, Station: Ann);
        var cause = new CauseFinder(schedule, [1, 0]).Explain(0);
        Assert.Equal((expected, 0), (cause.Cause, cause.CoBlockers.Count));
        Assert.Null(CauseChecker.Check(schedule, 0, cause));
        Assert.Equal(expected with { Kind = CauseKind.StationHeld }, new CauseFinder(schedule).Explain(0).Cause);
        Assert.Equal(expected with { Kind = CauseKind.StationHeld }, new CauseFinder(schedule, [0, 1]).Explain(0).Cause);
        Assert.Equal(CauseKind.ClosedHours, new CauseFinder(schedule, [1, 0]).Explain(1).Cause.Kind);
    }

    private static IEnumerable<string> PartsOf(BenchSchedule schedule) => Enumerable.Range(0, schedule.Problem.Stages.Count)
        .Select(stage => string.Join(' ', schedule.Parts(stage).ToArray()));

    private sealed class Shares(Action<double> told) : IProgress<double>
    {
        public List<double> Told { get; } = [];

        public void Report(double value)
        {
            Told.Add(value);
            told(value);
        }
    }
}
