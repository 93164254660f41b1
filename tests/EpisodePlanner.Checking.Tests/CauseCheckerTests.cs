using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class CauseCheckerTests
{
    private static readonly Blocker Now = new(CauseKind.Now);
    private static readonly Blocker Date = new(CauseKind.Date);
    private static readonly Blocker Presence = new(CauseKind.Presence);
    private static readonly Blocker Block = new(CauseKind.MinimumBlock);
    private static readonly Blocker SettingUp = new(CauseKind.SettingUp);

    [Fact]
    public void Check_Now_NeedsMinuteZero()
    {
        var input = Input(Attended("Draw", 10, Bob));
        AssertHolds(0, Now, input, [Work(0, 10)]);
        AssertFails("starts at 1, not now", 0, Now, input, [Work(1, 11)]);
    }

    [Fact]
    public void Check_Begun_NeedsABegunStage()
    {
        var input = Input(Wait("Delivery", 10) with { Begun = true }, Wait("Dry", 10));
        AssertHolds(0, new Blocker(CauseKind.Begun), input, [Waited(0, 10)], [Waited(0, 10)]);
        AssertFails("was not going on", 1, new Blocker(CauseKind.Begun), input, [Waited(0, 10)], [Waited(0, 10)]);
    }

    [Fact]
    public void Check_Predecessor_WithoutItsLinkStartsEarlier()
    {
        var input = Input(Attended("Sand", 20, Ann), Attended("Draw", 10, Bob)) with
        { Links = [new BenchLink(0, 1, LinkKind.After)] };
        SchedulePart[][] parts = [[Work(0, 20)], [Work(20, 30)]];
        AssertHolds(1, new Blocker(CauseKind.Predecessor, Stage: 0, Link: 0), input, parts);
        AssertFails("cannot start before 20 even with Date relaxed", 1, Date, input, parts);
        AssertFails("without a link", 1, new Blocker(CauseKind.Predecessor, Stage: 0), input, parts);
        AssertFails("does not lead here", 0, new Blocker(CauseKind.Predecessor, Stage: 0, Link: 0), input, parts);
    }

    [Fact]
    public void Check_FinishLink_DelaysTheStart()
    {
        var input = Input(Attended("Sand", 20, Ann), Attended("Draw", 10, Bob)) with
        { Links = [new BenchLink(0, 1, LinkKind.TogetherFinish)] };
        AssertHolds(1, new Blocker(CauseKind.Predecessor, Stage: 0, Link: 0), input, [Work(0, 20)], [Work(10, 20)]);
        AssertFails("cannot start before 10", 1, Date, input, [Work(0, 20)], [Work(10, 20)]);
    }

    [Fact]
    public void Check_StationHeld_ByTheNamedStage()
    {
        var input = Input(Attended("Sand", 20, Bob, Desk), Attended("Draw", 10, Bob), Attended("Cut", 10, Ann));
        SchedulePart[][] parts = [[Work(0, 20)], [Work(20, 30)], [Work(0, 10)]];
        AssertHolds(1, new Blocker(CauseKind.StationHeld, Stage: 0, Station: Bob), input, parts);
        AssertHolds(1, new Blocker(CauseKind.AcceptedOrder, Stage: 0, Station: Bob), input, parts);
        AssertFails("cannot start before 20", 1, new Blocker(CauseKind.StationHeld, Stage: 0, Station: Desk), input, parts);
        AssertFails("cannot start before 20", 1, new Blocker(CauseKind.StationHeld, Stage: 2, Station: Bob), input, parts);
        AssertFails("without another stage", 1, new Blocker(CauseKind.StationHeld, Stage: 1, Station: Bob), input, parts);
    }

    [Fact]
    public void Check_TwoHolders_NeedBoth()
    {
        var input = Input(Attended("Sand", 20, Bob), Attended("Oil", 20, Ann), Attended("Lift", 10, Ann, Bob));
        SchedulePart[][] parts = [[Work(0, 20)], [Work(0, 20)], [Work(20, 30)]];
        var bob = new Blocker(CauseKind.StationHeld, Stage: 0, Station: Bob);
        var ann = new Blocker(CauseKind.StationHeld, Stage: 1, Station: Ann);
        AssertFails("cannot start before 20", 2, bob, input, parts);
        Assert.Null(CauseChecker.Check(Schedule(input, parts), 2, new StartCause(bob, [ann])));
    }

    [Fact]
    public void Check_ClosedHours_OfStationAndLimit()
    {
        var sand = Attended("Sand", 20, Ann) with { NotBefore = 105 };
        AssertHolds(0, new Blocker(CauseKind.ClosedHours, Station: Ann), Input(sand), [Work(120, 140)]);
        AssertFails("without one station or one limit", 0, new Blocker(CauseKind.ClosedHours), Input(sand), [Work(120, 140)]);
        AssertFails("cannot start before 120", 0, Presence, Input(sand), [Work(120, 140)]);
        var loud = Attended("Saw", 20) with { NotBefore = 60, Modes = [new StageMode { Stations = [Bob], Limits = [Quiet] }] };
        AssertHolds(0, new Blocker(CauseKind.ClosedHours, Limit: Quiet), Input(loud), [Work(80, 100)]);
        AssertFails("cannot start before 80", 0, new Blocker(CauseKind.ClosedHours, Station: Bob), Input(loud), [Work(80, 100)]);
    }

    [Fact]
    public void Check_Presence_HoldsATouch()
    {
        AssertHolds(0, Presence, Input(Print("Print", 20, true)), Printed(10, 20, 40));
        AssertFails("cannot start before 10", 0, Date, Input(Print("Print", 20, true)), Printed(10, 20, 40));
        AssertHolds(0, Presence, Input(Print("Print", 28, false) with { NotBefore = 71 }), Printed(120, 28, 150));
    }

    [Fact]
    public void Check_MinimumBlock_SkipsShortOpenings()
    {
        var sand = Attended("Sand", 30, Ann) with { MinimumBlock = 20, NotBefore = 85 };
        AssertHolds(0, Block, Input(sand), [Work(120, 150)]);
        AssertFails("cannot start before 120", 0, SettingUp, Input(sand), [Work(120, 150)]);
    }

    [Fact]
    public void Check_SettingUp_DelaysTheFirstWork()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Draw", 10, Bob));
        AssertHolds(0, SettingUp, input, [Work(5, 15)], [Work(18, 28)]);
        AssertHolds(1, SettingUp, input, [Work(5, 15)], [Work(18, 28)]);
        AssertFails("cannot start before 5", 0, Block, input, [Work(5, 15)], [Work(18, 28)]);
        AssertFails("cannot start before 18", 1, Block, input, [Work(5, 15)], [Work(18, 28)]);
    }

    [Fact]
    public void Check_Date_Relaxed()
    {
        AssertHolds(0, Date, Input(Wait("Dry", 10) with { NotBefore = 30 }), [Waited(30, 40)]);
        AssertFails("cannot start before 30", 0, Presence, Input(Wait("Dry", 10) with { NotBefore = 30 }), [Waited(30, 40)]);
    }

    [Fact]
    public void Check_GreatestLag_WithoutItStartsEarlier()
    {
        // Draw can't start before 20; Sand ends at most 5 minutes before.
        var input = Input(Attended("Sand", 10, Bob), Attended("Draw", 10, Ann) with { NotBefore = 20 }) with
        { Links = [new BenchLink(0, 1, LinkKind.After) { AtMost = 5 }] };
        SchedulePart[][] parts = [[Work(5, 15)], [Work(20, 30)]];
        AssertHolds(0, new Blocker(CauseKind.GreatestLag, Stage: 1, Link: 0), input, parts);
        AssertHolds(1, Date, input, parts);
        AssertFails("cannot start before 5", 0, Date, input, parts);
        AssertFails("no greatest lag that leads", 1, new Blocker(CauseKind.GreatestLag, Stage: 0, Link: 0), input, parts);
        AssertFails("without a link", 0, new Blocker(CauseKind.GreatestLag, Stage: 1), input, parts);
    }

    private static void AssertHolds(int stage, Blocker cause, BenchInput input, params SchedulePart[][] parts) =>
        Assert.Null(CauseChecker.Check(Schedule(input, parts), stage, new StartCause(cause, [])));

    private static void AssertFails(string words, int stage, Blocker cause, BenchInput input, params SchedulePart[][] parts)
    {
        var found = CauseChecker.Check(Schedule(input, parts), stage, new StartCause(cause, []));
        Assert.Contains(words, found, StringComparison.Ordinal);
    }
}
