using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Causes;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Source: what a chain of causes promises; no outside numbers.</summary>
public sealed class ChainTests
{
    [Fact]
    public void Chain_RandomProblems_LeadsBackWithoutARing()
    {
        for (ulong seed = 1; seed <= 600; seed++)
        {
            var problem = RandomProblems.Create(seed);
            AssertAllLeadBack(RandomProblems.WithoutGreatestLags(problem), seed);
            AssertAllLeadBack(problem, seed);
        }
    }

    private static void AssertAllLeadBack(BenchProblem problem, ulong seed)
    {
        var schedule = Sound.Search(problem, schedules: 3).Schedule;
        var causes = new CauseFinder(schedule);
        foreach (var stage in schedule.Order)
        {
            AssertLeadsBack(schedule, causes.Chain(stage), stage, seed);
        }
    }

    [Fact]
    public void Chain_LinkStationAndHours_NamesEach()
    {
        var input = Input(Work("Cut", 180, Ann), Work("Sand", 90, Ann), Work("Paint", 30, Bob)) with { Links = [After(1, 2)] };
        var schedule = Sound.Search(Sound.Problem(input), accepted: [0, 1, 2]).Schedule;
        Assert.Equal([At(0, 18), At(0, 21), At(1, 20)], Enumerable.Range(0, 3).Select(schedule.Start));
        var chain = new CauseFinder(schedule).Chain(2);

        // Paint waits for Bob's hours, and for these because Sand ended after his evening; Sand waits for Cut's hands.
        Assert.Equal([(2, 1), (1, 0), (0, -1)], chain.Select(step => (step.Stage, step.Next)));
        Assert.Equal(
            [CauseKind.ClosedHours, CauseKind.StationHeld, CauseKind.ClosedHours], chain.Select(step => step.Cause.Cause.Kind));
    }

    [Fact]
    public void Chain_GluedWait_LeadsToItsWork()
    {
        var input = Input(Work("Glue", 60, Ann), Wait("Glue sets", 600) with { GluedTo = 0 }) with { Links = [After(0, 1)] };
        var chain = new CauseFinder(Sound.Schedule(input)).Chain(1);
        Assert.Equal([1, 0], chain.Select(step => step.Stage));
        Assert.Equal(new(CauseKind.Predecessor, Stage: 0), chain[0].Cause.Cause);
    }

    [Fact]
    public void Chain_NowDateAndBegun_EndAtOnce()
    {
        var input = Input(
            Wait("Delivery", 600), Wait("Approval", 600) with { NotBefore = 100 }, Work("Sand", 60, Ann) with { Begun = true });
        var schedule = Sound.Schedule(input);
        var causes = new CauseFinder(schedule);
        CauseKind[] expected = [CauseKind.Now, CauseKind.Date, CauseKind.Begun];
        for (var stage = 0; stage < expected.Length; stage++)
        {
            var step = Assert.Single(causes.Chain(stage));
            Assert.Equal((stage, expected[stage], -1), (step.Stage, step.Cause.Cause.Kind, step.Next));
        }
    }

    /// <summary>
    /// Every step leads to a stage that had its place before, and no stage comes twice, so that no chain can come round. Only
    /// a stage that another one must follow soon may wait for one that was placed after it.
    /// </summary>
    private static void AssertLeadsBack(BenchSchedule schedule, IReadOnlyList<ChainStep> chain, int stage, ulong seed)
    {
        var told = $"Seed {seed}, stage {stage}: {string.Join(" | ", chain.Select(s => $"{s.Stage} {s.Cause.Cause} → {s.Next}"))}";
        Assert.True(chain[0].Stage == stage && chain[^1].Next == -1, told);
        var placed = schedule.Order.Select((member, place) => (member, place)).ToDictionary(pair => pair.member, pair => pair.place);
        foreach (var (step, next) in chain.Zip(chain.Skip(1)))
        {
            var waitsForLater = schedule.Problem.Links.Any(link => link.AtMost is not null
                && (link.From == step.Stage || schedule.Problem.Stages[link.From].GluedTo == step.Stage));
            Assert.True(step.Next == next.Stage && (waitsForLater || placed[next.Stage] < placed[step.Stage]), told);
        }

        Assert.True(chain.Select(step => step.Stage).Distinct().Count() == chain.Count, told);
    }
}
