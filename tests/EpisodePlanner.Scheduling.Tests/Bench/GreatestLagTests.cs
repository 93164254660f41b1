using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Causes;
using EpisodePlanner.Scheduling.Networks;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// Greatest lags, built by hand: Ann is there from 18 to 22, the mill never closes. Source: the rules of the problem, worked
/// out on paper.
/// </summary>
public sealed class GreatestLagTests
{
    private static readonly BenchStage Paint = Work("Paint", 180, Ann) with { MinimumBlock = 180 };

    private static readonly BenchStage Coat = Work("Second coat", 90, Ann) with { MinimumBlock = 90 };

    [Fact]
    public void Recoat_NoTimeTheSameEvening_FirstWorkWaitsForAnOtherOne()
    {
        // Painted first thing, the coat has 60 minutes left, the same on every evening. Filled after cutting, it has none left
        // on the first evening; on the second both fit.
        var schedule = Sound.Schedule(Input(Paint, Coat) with { Links = [After(0, 1) with { AtMost = 120 }] });
        Assert.Equal((true, false), (schedule.IsPlaced(0), schedule.IsPlaced(1)));
        var input = Input(Work("Cut", 120, Ann), Work("Fill", 120, Ann) with { MinimumBlock = 120 }, Coat) with
        {
            Links = [After(0, 1), After(1, 2) with { AtMost = 120 }],
        };
        schedule = Sound.Schedule(input);
        Assert.Equal((At(1, 18), At(1, 20)), (schedule.Start(1), schedule.Start(2)));
        var causes = new CauseFinder(schedule);
        AssertCause(schedule, 1, new Blocker(CauseKind.GreatestLag, Stage: 2, Link: 1));
        Assert.Equal([1, 2], causes.Chain(1).Select(step => step.Stage));
    }

    [Theory]
    [InlineData(LinkKind.After, 0, 19, 0)] // finishes 20:00, an hour before
    [InlineData(LinkKind.TogetherStart, 0, 20, 0)]
    [InlineData(LinkKind.TogetherFinish, 0, 19, 30)] // 21:30 less an hour
    [InlineData(LinkKind.StartToFinish, 0, 20, 30)]
    public void EachKind_FollowerHasADate_MovesTheEndItLeavesFrom(LinkKind kind, int day, int hour, int minute)
    {
        // Half an hour at the mill from 21:00; an hour of Ann's at most an hour before, by the ends of the link.
        var input = Input(Work("Mix", 60, Ann), Work("Pour", 30, Mill) with { NotBefore = At(0, 21) }) with
        {
            Links = [new BenchLink(0, 1, kind) { Lag = -Horizon, AtMost = 60 }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal((At(day, hour, minute), At(0, 21)), (schedule.Start(0), schedule.Start(1)));
        AssertCause(schedule, 0, new Blocker(CauseKind.GreatestLag, Stage: 1, Link: 0));
    }

    [Fact]
    public void Chain_OfLags_MovesAllOfIt()
    {
        // Each within half an hour of the one before, the last not before 21:00.
        var input = Input(Work("One", 10, Mill), Work("Two", 10, Mill), Work("Three", 10, Mill) with { NotBefore = At(0, 21) }) with
        {
            Links = [After(0, 1) with { AtMost = 30 }, After(1, 2) with { AtMost = 30 }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal([At(0, 19, 40), At(0, 20, 20), At(0, 21)], Enumerable.Range(0, 3).Select(schedule.Start));
        Assert.Equal([0, 1, 2], new CauseFinder(schedule).Chain(0).Select(step => step.Stage));
        var network = WorkshopNetwork.Of(schedule.Problem);
        Assert.Equal([At(0, 19, 40), At(0, 20, 20), At(0, 21)], network.EarlyStart);
        Assert.Equal([false, false, true], network.Critical);
        Assert.Equal([60, 30, 0], Enumerable.Range(0, 3).Select(network.TotalFloat));
        Assert.Equal([30, 0, 0], network.FreeFloat);
    }

    [Fact]
    public void FollowerAlsoWaitsForSomethingLate_FirstWorkIsDoneLateEnough()
    {
        // The coat waits for a delivery that comes on the third day.
        var input = Input(Paint, Wait("Delivery", At(2, 0)), Work("Coat", 60, Ann)) with
        {
            Links = [After(0, 2) with { AtMost = 120 }, After(1, 2)],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal((At(2, 18), At(2, 21)), (schedule.Start(0), schedule.Start(2)));
    }

    [Fact]
    public void GluedWait_LagLeavesFromIt_MovesItsWork()
    {
        // Sets for 10 hours, and is sanded within an hour: so glued in the evening before Bob's, ten hours before 20:00.
        var input = Input(Work("Glue", 30, Mill, Table), Wait("Sets", 600, Table) with { GluedTo = 0 }, Work("Sand", 30, Bob)) with
        {
            Links = [After(0, 1), After(1, 2) with { AtMost = 60 }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal((At(0, 8, 30), At(0, 9), At(0, 20)), (schedule.Start(0), schedule.Start(1), schedule.Start(2)));
        AssertCause(schedule, 0, new Blocker(CauseKind.GreatestLag, Stage: 2, Link: 1));
    }

    [Fact]
    public void FirstWorkIsGoingOn_FollowsAsSoonAsItCan_AndIsTold()
    {
        var input = Input(Work("Paint", 60, Mill) with { Begun = true }, Work("Coat", 60, Ann)) with
        {
            Links = [After(0, 1) with { AtMost = 120 }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal(At(0, 18), schedule.Start(1));
        Assert.Contains("1020 minutes after 'Paint', more than 120", Assert.Single(ScheduleChecker.AtMostBroken(schedule)), StringComparison.Ordinal);
    }

    [Fact]
    public void NoMomentKeepsIt_StaysUnplaced_AndTheFirstWorkIsNotDelayed()
    {
        // Ann's evenings are 20 hours apart, the coat must come 5 to 10 hours later.
        var input = Input(Work("Paint", 60, Ann), Work("Coat", 60, Ann)) with { Links = [After(0, 1, lag: 300) with { AtMost = 600 }] };
        var schedule = Sound.Schedule(input);
        Assert.Equal((At(0, 18), false), (schedule.Start(0), schedule.IsPlaced(1)));
        var network = WorkshopNetwork.Of(schedule.Problem);
        Assert.Equal((-1, 0, At(0, 18)), (network.EarlyStart[1], network.UnkeptLink[1], network.EarlyStart[0]));
    }

    [Fact]
    public void Contradiction_InOneLinkOrRound_StaysUnplacedAtOnce()
    {
        var input = Input(Work("One", 10, Mill), Work("Two", 10, Mill), Work("Three", 10, Mill)) with
        {
            Links = [After(0, 1, lag: 30), After(1, 2), After(0, 2) with { AtMost = 20 }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal((0, 40, false), (schedule.Start(0), schedule.Start(1), schedule.IsPlaced(2)));
        var direct = Sound.Schedule(Input(Work("One", 10, Mill), Work("Two", 10, Mill)) with { Links = [After(0, 1, lag: 30) with { AtMost = 20 }] });
        Assert.False(direct.IsPlaced(1));
    }

    private static void AssertCause(BenchSchedule schedule, int stage, Blocker expected)
    {
        var cause = new CauseFinder(schedule).Explain(stage);
        Assert.Equal((expected, 0), (cause.Cause, cause.CoBlockers.Count));
        Assert.Null(CauseChecker.Check(schedule, stage, cause));
    }
}
