using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Waits, glue and links, built by hand. Source: the rules of the problem, worked out on paper.</summary>
public sealed class WaitAndLinkTests
{
    private static readonly BenchInput GlueUp = Input(
        Work("Glue", 60, Ann, Table), Wait("Glue sets", 720, Table) with { GluedTo = 0 }, Work("Sand", 30, Ann, Table)) with
    {
        Links = [After(0, 1)],
    };

    [Fact]
    public void Glue_FillsTheTableUntilItIsSet()
    {
        var schedule = Sound.Search(Sound.Problem(GlueUp), accepted: [0, 1, 2]).Schedule;
        Assert.Equal((At(0, 19), At(1, 7)), (schedule.Start(1), schedule.Finish(1)));
        Assert.Equal(At(1, 18), schedule.Start(2));
    }

    [Fact]
    public void Glue_TableWantedBefore_WaitsUntilTheWholeSettingFits()
    {
        // Sand has the table from 19:30; glued earlier, the work would still be setting then.
        var input = GlueUp with { Stages = [.. GlueUp.Stages.Take(2), GlueUp.Stages[2] with { NotBefore = At(0, 19, 30) }] };
        var schedule = Sound.Search(Sound.Problem(input), accepted: [2, 0, 1]).Schedule;
        Assert.Equal((At(0, 19, 30), At(0, 20, 1)), (schedule.Start(2), schedule.Finish(0)));

        // In one go it comes after the sanding altogether.
        var oneGo = input with { Stages = [input.Stages[0] with { MinimumBlock = 60 }, .. input.Stages.Skip(1)] };
        var whole = Sound.Search(Sound.Problem(oneGo), accepted: [2, 0, 1]).Schedule;
        Assert.Equal((At(0, 20), At(0, 21)), (whole.Start(0), whole.Start(1)));
    }

    [Fact]
    public void Glue_WaitCountsOpenHours_FillsTheTableThroughTheNight()
    {
        var sets = GlueUp.Stages[1] with { Minutes = 200, WaitHours = Presence };
        var input = GlueUp with { Stages = [GlueUp.Stages[0], sets, GlueUp.Stages[2]] };
        var schedule = Sound.Search(Sound.Problem(input), accepted: [0, 1, 2]).Schedule;
        Assert.Equal((At(0, 19), At(1, 18, 20)), (schedule.Start(1), schedule.Finish(1)));
        Assert.Equal(At(1, 18, 20), schedule.Start(2));
    }

    [Fact]
    public void Wait_InOpenHours_PassesOnlyThen()
    {
        var approval = Wait("Approval", 300) with { WaitHours = Daily(9, 12) };
        Assert.Equal(At(1, 11), Sound.Schedule(Input(approval)).Finish(0));
    }

    [Fact]
    public void Lag_Elapsed_PassesAtNight()
    {
        var input = Input(Work("Paint", 60, Ann), Work("Second coat", 60, Ann)) with { Links = [After(0, 1, lag: 480)] };
        Assert.Equal(At(1, 18), Sound.Schedule(input).Start(1));
        Assert.Equal(At(0, 20), Sound.Schedule(input with { Links = [After(0, 1, lag: 60)] }).Start(1));
        Assert.Equal(At(0, 18, 30), Sound.Schedule(
            Input(Work("Paint", 60, Ann), Work("Watch", 30, Printer)) with { Links = [After(0, 1, lag: -30)] }).Start(1));
    }

    [Fact]
    public void Lag_InWorkingMinutes_CountsPresenceOnly()
    {
        var lag = After(0, 1, lag: 200) with { LagHours = Presence };
        var input = Input(Work("Paint", 60, Ann), Work("Second coat", 30, Ann)) with { Links = [lag] };
        Assert.Equal(At(1, 18, 20), Sound.Schedule(input).Start(1));
        Assert.Equal(At(0, 20), Sound.Schedule(input with { Links = [lag with { Lag = 60 }] }).Start(1));
    }

    [Theory]
    [InlineData(LinkKind.After, 0, 18, 0, 20, 0)]
    [InlineData(LinkKind.TogetherStart, 0, 18, 0, 18, 0)]
    [InlineData(LinkKind.TogetherFinish, 0, 18, 0, 19, 30)]
    [InlineData(LinkKind.StartToFinish, 60, 18, 0, 18, 30)]
    public void Link_EachKind_HoldsItsEnds(LinkKind kind, int lag, int hour, int minute, int linkedHour, int linkedMinute)
    {
        var input = Input(Work("Sand", 120, Ann), Work("Watch", 30, Mill) with { NotBefore = At(0, 18) }) with
        {
            Links = [new BenchLink(0, 1, kind) { Lag = lag }],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal((At(0, hour, minute), At(0, linkedHour, linkedMinute)), (schedule.Start(0), schedule.Start(1)));
    }
}
