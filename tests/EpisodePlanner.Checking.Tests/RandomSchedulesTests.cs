using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking.Tests;

public sealed class RandomSchedulesTests
{
    [Fact]
    public void Create_OnManyProblems_IsFeasible()
    {
        for (var seed = 0UL; seed < 1500; seed++)
        {
            var schedule = RandomSchedules.Create(RandomProblems.Create(seed), seed);
            AssertFeasible(schedule, seed);
        }
    }

    [Fact]
    public void Create_OnTinyProblems_IsFeasible()
    {
        for (var seed = 0UL; seed < 1500; seed++)
            AssertFeasible(RandomSchedules.Create(RandomProblems.Tiny(seed), seed), seed);
    }

    [Fact]
    public void Problems_HoldEveryKindOfThing()
    {
        var problems = Enumerable.Range(0, 400).Select(seed => RandomProblems.Create((ulong)seed)).ToArray();
        var stages = problems.SelectMany(p => p.Stages).ToArray();
        var links = problems.SelectMany(p => p.Links).ToArray();
        Assert.All(Enum.GetValues<StageKind>(), kind => Assert.Contains(stages, s => s.Kind == kind));
        Assert.All(Enum.GetValues<LinkKind>(), kind => Assert.Contains(links, l => l.Kind == kind && l.LagHours is not null));
        Assert.Contains(stages, s => s.GluedTo != -1 && s.Modes[0].Stations.Count > 0);
        Assert.Contains(stages, s => s.Begun && s.Kind == StageKind.Run);
        Assert.Contains(stages, s => s.LookAt is not null);
        Assert.Contains(stages, s => s.StaysSetUp && s.Modes.Count > 1);
        Assert.Contains(links, l => l.Lag < 0);
        Assert.All(Enum.GetValues<LinkKind>(), kind => Assert.Contains(links, l => l.Kind == kind && l.AtMost is not null));
    }

    [Fact]
    public void Create_PlacesMostStagesAndPausesSome()
    {
        // At random a greatest lag is seldom kept, so how many are placed is counted without them.
        var schedules = Enumerable.Range(0, 300)
            .Select(i => RandomSchedules.Create(RandomProblems.WithoutGreatestLags(RandomProblems.Create((ulong)i)), 1)).ToArray();
        var stages = schedules.Sum(s => s.Problem.Stages.Count);
        var placed = schedules.Sum(s => s.Order.Count);
        Assert.True(placed > stages * 0.7, $"Only {placed} of {stages} stages are placed.");
        Assert.Contains(schedules, s => s.Order.Any(i => s.Problem.Stages[i].Kind == StageKind.Attended && s.Parts(i).Length > 1));
    }

    private static void AssertFeasible(BenchSchedule schedule, ulong seed)
    {
        var found = ScheduleChecker.Check(schedule);
        Assert.True(found.Count == 0, $"Seed {seed}: {string.Join(" ", found)}");
    }
}
