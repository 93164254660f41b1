using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class AttendedRulesTests
{
    private static readonly BenchStage Sand = Attended("Sand", 30, Ann, Desk);

    [Fact]
    public void Check_PauseOverClosedHours_IsRight() => AssertRight(Input(Sand), [Work(80, 100), Work(120, 130)]);

    [Fact]
    public void Check_ClosedStation_IsWrong()
    {
        AssertWrong("'Sand' works from 71 to 101 while Ann is closed", Input(Sand), [Work(71, 101)]);
        AssertWrong("works from 119 to 149 while Ann is closed", Input(Sand), [Work(119, 149)]);
        AssertWrong("works from 95 to 125 while Ann is closed", Input(Sand), [Work(95, 125)]);
    }

    [Fact]
    public void Check_Limit_IsKept()
    {
        var loud = Sand with { Modes = [Sand.Modes[0] with { Limits = [Quiet] }] };
        AssertRight(Input(loud), [Work(50, 60), Work(80, 100)]);
        AssertWrong("works from 31 to 61 outside the limit", Input(loud), [Work(31, 61)]);
    }

    [Fact]
    public void Check_WrongSum_IsWrong()
    {
        AssertWrong("works 29 minutes instead of 30", Input(Sand), [Work(0, 29)]);
        AssertWrong("works 31 minutes instead of 30", Input(Sand), [Work(0, 31)]);
    }

    [Fact]
    public void Check_MinimumBlock_HoldsUnlessLessIsLeft()
    {
        var block = Sand with { MinimumBlock = 10 };
        AssertRight(Input(block), [Work(75, 100), Work(120, 125)]);
        AssertRight(Input(block), [Work(90, 100), Work(120, 140)]);
        AssertWrong("only 9 minutes from 91", Input(block), [Work(91, 100), Work(120, 141)]);
        AssertWrong("only 5 minutes from 40", Input(block), [Work(0, 10), Work(40, 45), Work(50, 65)]);
    }

    [Fact]
    public void Check_TouchingParts_IsWrong() =>
        AssertWrong("two parts that touch at 10", Input(Sand), [Work(0, 10), Work(10, 30)]);

    [Fact]
    public void Check_EmptyPart_IsWrong() =>
        AssertWrong("has an empty part at 40", Input(Sand with { MinimumBlock = 0 }), [Work(0, 30), Work(40, 40)]);

    [Fact]
    public void Check_NoMinutes_NeedsNothing()
    {
        var nothing = Attended("Milestone", 0, Ann, Shed);
        AssertRight(Input(nothing), [Work(110, 110)]);
        AssertRight(Input(nothing, Attended("Draw", 30, Ann)), [Work(20, 20)], [Work(10, 40)]);
        AssertWrong("works 1 minutes instead of 0", Input(Attended("Milestone", 0, Bob)), [Work(10, 11)]);
    }
}
