using EpisodePlanner.Checking;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Attended work, built by hand. Source: the rules of the problem, worked out on paper.</summary>
public sealed class AttendedTests
{
    [Fact]
    public void Work_LongerThanAnEvening_GoesOnTheNext()
    {
        var schedule = Sound.Schedule(Input(Work("Wire", 300, Ann)));
        Assert.Equal([Stretch(At(0, 18), At(0, 22)), Stretch(At(1, 18), At(1, 19))], schedule.Parts(0).ToArray());
    }

    [Fact]
    public void Work_NeedsTwoPeople_IsDoneWhenBothAreThere() =>
        Assert.Equal(At(0, 20), Sound.Schedule(Input(Work("Lift", 30, Ann, Bob))).Start(0));

    [Fact]
    public void MinimumBlock_SkipsTheShortRestOfAnEvening()
    {
        var input = Input(Work("Sand", 200, Ann) with { Begun = true }, Work("Wire", 90, Ann) with { MinimumBlock = 45 });
        Assert.Equal([Stretch(At(1, 18), At(1, 19, 30))], Sound.Schedule(input).Parts(1).ToArray());

        // 40 minutes are left: enough for a block of 40, and then for a last one of what is left.
        var shorter = input with { Stages = [input.Stages[0], input.Stages[1] with { MinimumBlock = 40 }] };
        Assert.Equal(
            [Stretch(At(0, 21, 20), At(0, 22)), Stretch(At(1, 18), At(1, 18, 50))], Sound.Schedule(shorter).Parts(1).ToArray());
    }

    [Fact]
    public void Pause_FreesTheMachineUnlessItStaysSetUp()
    {
        var mill = Work("Mill frame", 300, Ann, Mill);
        var drill = Work("Drill plate", 60, Mill) with { NotBefore = At(0, 22) };
        Assert.Equal(At(0, 22), Sound.Schedule(Input(mill with { Begun = true }, drill)).Start(1));
        var kept = mill with { StaysSetUp = true, Begun = true };
        Assert.Equal(At(1, 19), Sound.Schedule(Input(kept, drill)).Start(1));
    }

    [Fact]
    public void Work_StaysSetUpAroundOtherWork_StartsBehindIt()
    {
        var mill = Work("Mill frame", 300, Ann, Mill) with { StaysSetUp = true };
        var drill = Work("Drill plate", 60, Mill) with { NotBefore = At(1, 2), Begun = false };
        var schedule = Sound.Search(Sound.Problem(Input(mill, drill)), accepted: [1, 0]).Schedule;
        Assert.Equal((At(1, 2), At(1, 18)), (schedule.Start(1), schedule.Start(0)));
    }

    [Fact]
    public void OneOf_PicksTheEarlierFinish()
    {
        var either = Work("Sort", 60) with { Modes = [new StageMode { Stations = [Bob] }, new StageMode { Stations = [Ann] }] };
        var schedule = Sound.Schedule(Input(either));
        Assert.Equal((At(0, 19), 1), (schedule.Finish(0), schedule.Parts(0)[0].Mode));

        // Ann sands until 20:30; Bob is free from 20:00 and finishes sooner.
        var later = Sound.Schedule(Input(either, Work("Sand", 150, Ann) with { Begun = true }));
        Assert.Equal((At(0, 21), 0), (later.Finish(0), later.Parts(0)[0].Mode));
    }

    [Fact]
    public void OneOf_TwoPrinters_PrintsSideBySide()
    {
        var print = Print("Deck", 60) with
        {
            Modes = [new StageMode { Machine = Printer, RunsAlone = true }, new StageMode { Machine = OtherPrinter, RunsAlone = true }],
        };
        var schedule = Sound.Schedule(Input(print, print with { Name = "Hull" }));
        Assert.Equal((At(0, 18), At(0, 18)), (schedule.Start(0), schedule.Start(1)));
        Assert.NotEqual(schedule.Parts(0)[0].Mode, schedule.Parts(1)[0].Mode);
    }

    [Fact]
    public void SittingsAtAPlace_ShareSettingUpAndTidying()
    {
        var input = Input(Work("Sand", 60, Ann, Table), Work("Oil", 60, Ann, Table), Work("Draw", 30, Ann));
        input = input with
        {
            Stations = [.. input.Stations.Select((s, i) => i == Table ? s with { SetUpMinutes = 10, TidyMinutes = 5 } : s)],
            Links = [After(0, 1), After(1, 2)],
        };
        var schedule = Sound.Schedule(input);
        Assert.Equal([At(0, 18, 10), At(0, 19, 10), At(0, 20, 15)], Enumerable.Range(0, 3).Select(schedule.Start));
    }

    [Fact]
    public void NoMinutes_NeedsNobodyAndNoHours()
    {
        var input = Input(Wait("Glass arrives", 600), Work("Glass is here", 0, Ann)) with { Links = [After(0, 1)] };
        Assert.Equal((600, 600), (Sound.Schedule(input).Start(1), Sound.Schedule(input).Finish(1)));
    }

    [Fact]
    public void TooLittleTime_LeavesItOutWithAllThatWaitForIt()
    {
        var input = Input(Work("Never", (Days * 240) + 1, Ann), Work("After", 5, Bob), Work("Free", 5, Bob)) with { Links = [After(0, 1)] };
        var schedule = Sound.Schedule(input);
        Assert.Equal([2], schedule.Order);
        Assert.Empty(ScheduleChecker.AtMostBroken(schedule));
    }

    private static SchedulePart Stretch(int start, int end) => new(PartKind.Work, start, end, 0);
}
