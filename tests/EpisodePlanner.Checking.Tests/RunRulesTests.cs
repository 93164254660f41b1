using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class RunRulesTests
{
    private static readonly BenchStage Alone = Print("Print", 60, true);
    private static readonly BenchStage Watched = Print("Print", 60, false);

    [Fact]
    public void Check_AloneOverAbsence_IsRight() => AssertRight(Input(Alone), Printed(80, 60, 142));

    [Fact]
    public void Check_WatchedOverAbsence_IsWrong()
    {
        AssertRight(Input(Watched), Printed(38, 60, 120));
        AssertWrong("may not run alone but runs or has to fit from 41 to 101", Input(Watched), Printed(39, 60, 120));
    }

    [Fact]
    public void Check_WatchedAndTooLongToFit_IsWrong()
    {
        var careful = Watched with { FitMinutes = 70 };
        AssertRight(Input(careful), Printed(28, 60, 120));
        AssertWrong("has to fit from 31 to 101", Input(careful), Printed(29, 60, 120));
        AssertRight(Input(Alone with { FitMinutes = 70 }), Printed(80, 60, 142));
    }

    [Fact]
    public void Check_TouchWithNobody_IsWrong()
    {
        AssertWrong("loads from 9 to 11 with nobody present", Input(Alone), Printed(9, 60, 75));
        AssertWrong("unloads from 98 to 101 with nobody present", Input(Alone), Printed(30, 60, 98));
    }

    [Fact]
    public void Check_TouchOfNoLength_NeedsItsMinute()
    {
        var bare = Alone with { LoadMinutes = 0, UnloadMinutes = 0 };
        AssertRight(Input(bare), Bare(10, 120));
        AssertWrong("loads from 9 to 9 with nobody present", Input(bare), Bare(9, 120));
        AssertWrong("unloads from 100 to 100 with nobody present", Input(bare), Bare(10, 100));
    }

    [Fact]
    public void Check_HandsInClosedHours_IsWrong()
    {
        var hands = Print("Print", 60, true, Ann) with { LoadTakesHands = true, UnloadTakesHands = true };
        AssertRight(Input(hands), Printed(0, 60, 97));
        AssertWrong("unloads from 98 to 101 while Ann is closed", Input(hands), Printed(0, 60, 98));
        var shorter = hands with { Minutes = 40, FitMinutes = 40 };
        AssertWrong("loads from 99 to 101 while Ann is closed", Input(shorter), Printed(99, 40, 150));
    }

    [Fact]
    public void Check_ClosedMachineOrLimit_IsWrong()
    {
        AssertWrong("runs from 92 to 152 while the printer is closed", Input(Alone), Printed(90, 60, 160));
        var quiet = Alone with { Modes = [Alone.Modes[0] with { Limits = [Quiet] }] };
        AssertRight(Input(quiet), Printed(80, 60, 142));
        AssertWrong("runs from 52 to 112 outside the limit", Input(quiet), Printed(50, 60, 130));
        AssertWrong("loads from 79 to 81 outside the limit", Input(quiet), Printed(79, 60, 142));
    }

    [Fact]
    public void Check_GapOrWrongLength_IsWrong()
    {
        var parts = Printed(10, 60, 90);
        AssertWrong("is loaded at 11 and runs only at 12", 2, Input(Alone), [parts[0] with { End = 11 }, .. parts[1..]]);
        AssertWrong("runs for 59 minutes instead of 60", 1, Input(Alone), [parts[0], parts[1] with { End = 71 }, parts[2]]);
        AssertWrong("unloads for 4 minutes instead of 3", 1, Input(Alone), [parts[0], parts[1], parts[2] with { End = 94 }]);
    }

    [Fact]
    public void Check_LookAt_DelaysTheUnload()
    {
        var looked = Alone with { LookAt = Open((40, 41), (85, 86)) };
        AssertRight(Input(looked), Printed(10, 60, 85));
        AssertWrong("unloaded at 84, before its end at 72 can be noticed", Input(looked), Printed(10, 60, 84));
        AssertWrong("before its end at 86 can be noticed", Input(looked), Printed(24, 60, 130));
    }

    [Fact]
    public void Check_Begun_RunsFromZeroWhateverTheHours()
    {
        var begun = Watched with { Begun = true, FitMinutes = 160 };
        SchedulePart run = new(PartKind.Run, 0, 60, 0), unload = new(PartKind.Unload, 60, 63, 0);
        AssertRight(Input(begun), [run, unload]);
        AssertRight(Input(begun), [new(PartKind.Load, 0, 0, 0), run, unload]);
        AssertWrong("has to run from minute 0", 1, Input(begun), Printed(10, 60, 80));
    }

    private static SchedulePart[] Bare(int start, int unload) =>
        [new(PartKind.Load, start, start, 0), new(PartKind.Run, start, start + 60, 0), new(PartKind.Unload, unload, unload, 0)];
}
