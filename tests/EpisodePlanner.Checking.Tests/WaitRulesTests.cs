using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class WaitRulesTests
{
    [Fact]
    public void Check_Elapsed_TakesItsMinutes()
    {
        AssertRight(Input(Wait("Dry", 30)), [Waited(90, 120)]);
        AssertWrong("waits from 90 to 121 instead of 120", Input(Wait("Dry", 30)), [Waited(90, 121)]);
    }

    [Fact]
    public void Check_WorkingMinutes_AreCounted()
    {
        var approval = Wait("Approval", 30) with { WaitHours = Open((0, 100), (120, 200)) };
        AssertRight(Input(approval), [Waited(90, 140)]);
        AssertRight(Input(approval), [Waited(70, 100)]);
        AssertWrong("waits from 90 to 120 instead of 140", Input(approval), [Waited(90, 120)]);
        AssertWrong("waits from 180 for hours that never come", Input(approval), [Waited(180, 200)]);
        AssertRight(Input(approval with { Minutes = 0 }), [Waited(110, 110)]);
    }

    [Fact]
    public void Check_Glued_StartsAtTheFinish()
    {
        var input = Glued(Attended("Glue", 10, Bob, Desk), Wait("Set", 30, Desk) with { GluedTo = 0 });
        AssertRight(input, [Work(0, 10)], [Waited(10, 40)]);
        AssertWrong("starts at 11 and not at 10, the finish it is glued to", input, [Work(0, 10)], [Waited(11, 41)]);
        AssertWrong("starts at 9 and not at 10, the finish it is glued to", 3, input, [Work(0, 10)], [Waited(9, 39)]);
        AssertWrong("'Set' starts at 9; 'Glue' allows it not before 10", 3, input, [Work(0, 10)], [Waited(9, 39)]);
        AssertWrong("to which it is glued, is not", 2, input, [], [Waited(11, 41)]);
        AssertWrong("is placed although 'Glue', for which it waits, is not", 2, input, [], [Waited(11, 41)]);
    }

    [Fact]
    public void Check_Begun_WaitsFromZero()
    {
        var input = Input(Wait("Delivery", 30) with { Begun = true });
        AssertRight(input, [Waited(0, 30)]);
        AssertWrong("has to wait from minute 0", input, [Waited(1, 31)]);
    }
}
