using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class PartRulesTests
{
    [Fact]
    public void Check_UnplacedStage_IsRight() => AssertRight(Input(Attended("Sand", 10, Ann)), [[]]);

    [Fact]
    public void Check_WrongKinds_IsWrong()
    {
        AssertWrong("'Sand' has the wrong parts: Wait", Input(Attended("Sand", 10, Ann)), [Waited(0, 10)]);
        AssertWrong("'Dry' has the wrong parts: Wait, Wait", Input(Wait("Dry", 10)), [Waited(0, 5), Waited(5, 10)]);
        AssertWrong("'Print' has the wrong parts: Load, Run", Input(Print("Print", 10, true)), Printed(10, 10, 30)[..2]);
    }

    [Fact]
    public void Check_UnknownMode_IsWrong() =>
        AssertWrong("uses a mode it does not have", Input(Attended("Sand", 10, Ann)), [Work(0, 10, 1)]);

    [Fact]
    public void Check_ChangedMode_IsWrong()
    {
        var sand = Attended("Sand", 10) with { Modes = [new StageMode { Stations = [Ann] }, new StageMode { Stations = [Bob] }] };
        AssertRight(Input(sand), [Work(0, 4, 1), Work(6, 12, 1)]);
        AssertWrong("changes its mode", Input(sand), [Work(0, 4, 0), Work(6, 12, 1)]);
    }

    [Fact]
    public void Check_UnloadMode_NeedsTheSameMachine()
    {
        var print = Print("Print", 10, true);
        var parts = Printed(10, 10, 30);
        parts[2] = parts[2] with { Mode = 1 };
        var input = Input(print with { Modes = [print.Modes[0], new StageMode { Machine = Printer, Stations = [Bob] }] });
        AssertRight(input, parts);
        var other = input.Stations.Append(new Station("the laser", StationKind.Machine, Open((0, 200)))).ToArray();
        var moved = print with { Modes = [print.Modes[0], new StageMode { Machine = other.Length - 1 }] };
        AssertWrong("changes its mode", Input(moved) with { Stations = other }, parts);
    }

    [Fact]
    public void Check_OverlappingOrBackwardParts_IsWrong()
    {
        AssertWrong("overlap or run backwards", Input(Attended("Sand", 10, Ann)), [Work(0, 6), Work(5, 9)]);
        AssertWrong("overlap or run backwards", Input(Attended("Sand", 10, Ann)), [Work(10, 0)]);
    }

    [Fact]
    public void Check_OutsideThePlan_IsWrong()
    {
        AssertRight(Input(Wait("Dry", 10)), [Waited(190, 200)]);
        AssertWrong("ends after the horizon at 200", Input(Wait("Dry", 10)), [Waited(191, 201)]);
        AssertWrong("before minute 0", Input(Wait("Dry", 10)), [Waited(-1, 9)]);
    }

    [Fact]
    public void Check_Date_IsKept()
    {
        var dry = Wait("Dry", 10) with { NotBefore = 20 };
        AssertRight(Input(dry), [Waited(20, 30)]);
        AssertWrong("before its date at 20", Input(dry), [Waited(19, 29)]);
        AssertRight(Input(dry with { Begun = true }), [Waited(0, 10)]);
    }
}
