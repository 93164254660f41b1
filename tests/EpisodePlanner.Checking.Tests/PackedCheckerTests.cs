using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Checking.Tests;

/// <summary>Source: the rules of plain problems; schedules made by hand.</summary>
public sealed class PackedCheckerTests
{
    private static readonly PackedProblem Three = Problem(
        [2, 3, 2], [2, 1, 1], capacity: 2, new NetworkLink(0, 1, LinkKind.After, 1));

    [Theory]
    [InlineData(0, 3, 2)]
    [InlineData(0, 3, 6)]
    [InlineData(2, 5, 5)]
    public void Check_FeasibleSchedules_FindsNothing(int first, int second, int third) => Assert.Empty(Check(first, second, third));

    [Fact]
    public void Check_LagNotKept_FindsIt() => Assert.Contains("3 is the earliest", Assert.Single(Check(0, 2, 5)));

    [Fact]
    public void Check_TooManyUnits_FindsIt() => Assert.Contains("3 of 'hands' are taken", Assert.Single(Check(0, 3, 1)));

    [Fact]
    public void Check_StartBeforeZero_FindsIt() => Assert.Contains("before 0", Assert.Single(Check(-1, 3, 3)));

    [Fact]
    public void Check_MovedStarts_AreFeasibleExactlyWhereAUnitCountSaysSo()
    {
        for (ulong seed = 1; seed <= 300; seed++)
        {
            var problem = RandomPlainProblems.Tiny(seed);
            var dice = new Dice(seed);
            var starts = Enumerable.Range(0, problem.Count).Select(_ => dice.Between(0, problem.Horizon)).ToArray();
            Assert.Equal(IsFeasible(problem, starts), PackedChecker.Check(PackedSchedule.FromStarts(problem, starts)).Count == 0);
        }
    }

    [Fact]
    public void LeastEnd_ByHand_IsTheOptimum()
    {
        Assert.Equal(6, PlainExhaustiveSearch.LeastEnd(Three));
        Assert.Equal(7, PlainExhaustiveSearch.LeastEnd(Problem([2, 3, 2], [1, 1, 1], capacity: 1)));
        Assert.Equal(5, PlainExhaustiveSearch.LeastEnd(Problem([2, 3, 2], [2, 2, 1], capacity: 3)));
    }

    private static IReadOnlyList<string> Check(params int[] starts) => PackedChecker.Check(PackedSchedule.FromStarts(Three, starts));

    private static bool IsFeasible(PackedProblem problem, int[] starts)
    {
        var finishes = starts.Select((start, i) => start + problem.Network.Activities[i].Duration).ToArray();
        return problem.Network.Links.All(link => starts[link.To] >= finishes[link.From] + link.Lag)
            && Enumerable.Range(0, (int)finishes.Max() + 1).All(time => Enumerable.Range(0, problem.Stations.Length).All(s =>
                Enumerable.Range(0, problem.Count).Sum(i => starts[i] <= time && time < finishes[i] ? problem.Demands[i][s] : 0)
                    <= problem.Stations[s].Capacity));
    }

    private static PackedProblem Problem(long[] durations, int[] demands, int capacity, params NetworkLink[] links)
    {
        var activities = durations.Select((duration, i) => new NetworkActivity($"a{i}", duration));
        Assert.True(ActivityNetwork.TryCreate(activities, links, out var network, out _));
        return Assert.IsType<PackedProblemResult.Sound>(PackedProblem.Create(new PackedInput
        {
            Network = network!,
            Stations = [new PackedStation("hands", capacity)],
            Demands = [.. demands.Select(units => (int[])[units])],
        })).Problem;
    }
}
