using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class StationRulesTests
{
    [Fact]
    public void Check_PersonTakenTwice_IsWrong()
    {
        var input = Input(Attended("Sand", 10, Ann), Attended("Draw", 10, Ann));
        AssertRight(input, [Work(0, 10)], [Work(10, 20)]);
        AssertWrong("'Draw' takes Ann at 9 while 'Sand' has it until 10", input, [Work(0, 10)], [Work(9, 19)]);
        AssertWrong("'Draw' takes Ann at 0 while 'Sand' has it until 10", input, [Work(0, 10)], [Work(0, 10)]);
    }

    [Fact]
    public void Check_ShortWorkInsideLong_IsWrongForEach()
    {
        var input = Input(Attended("Sand", 50, Ann), Attended("Draw", 5, Ann), Attended("Cut", 5, Ann));
        var found = ScheduleChecker.Check(Schedule(input, [Work(0, 50)], [Work(10, 15)], [Work(40, 45)]));
        Assert.Equal(2, found.Count(sentence => sentence.Contains("'Sand' has it until 50", StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_PauseFreesEverything_UnlessItStaysSetUp()
    {
        var sand = Attended("Sand", 20, Ann, Desk);
        var draw = Attended("Draw", 10, Bob, Desk);
        AssertRight(Input(sand, draw), [Work(90, 100), Work(120, 130)], [Work(105, 115)]);
        AssertWrong(
            "'Draw' takes the desk at 105 while 'Sand' has it until 130",
            Input(sand with { StaysSetUp = true }, draw),
            [Work(90, 100), Work(120, 130)],
            [Work(105, 115)]);
    }

    [Fact]
    public void Check_StaysSetUp_FreesPeople()
    {
        var sand = Attended("Sand", 20, Bob, Desk) with { StaysSetUp = true };
        AssertRight(Input(sand, Attended("Draw", 10, Bob)), [Work(0, 10), Work(20, 30)], [Work(10, 20)]);
    }

    [Fact]
    public void Check_PrinterHeldUntilUnloaded_IsWrongBefore()
    {
        var input = Input(Print("First", 10, true), Print("Second", 10, true));
        AssertRight(input, Printed(10, 10, 40), Printed(43, 10, 60));
        AssertWrong(
            "'Second' takes the printer at 42 while 'First' has it until 43", input, Printed(10, 10, 40), Printed(42, 10, 60));
    }

    [Fact]
    public void Check_HandsOfLoadAndUnload_AreTaken()
    {
        var input = Input(
            Print("Print", 10, true, Bob) with { LoadTakesHands = true, UnloadTakesHands = true }, Attended("Draw", 10, Bob));
        AssertRight(input, Printed(10, 10, 22), [Work(12, 22)]);
        AssertWrong("'Draw' takes Bob at 11", input, Printed(10, 10, 22), [Work(11, 21)]);
        AssertWrong("'Print' takes Bob at 22", input, Printed(10, 10, 22), [Work(13, 23)]);
    }

    [Fact]
    public void Check_Touches_TakeNobody()
    {
        var input = Input(Print("Print", 10, true, Bob), Attended("Draw", 20, Bob));
        AssertRight(input, Printed(10, 10, 22), [Work(8, 28)]);
    }

    [Fact]
    public void Check_WaitFillsItsPlace_IsWrong()
    {
        var input = Input(Wait("Dry", 30, Desk), Attended("Draw", 10, Bob, Desk));
        AssertRight(input, [Waited(0, 30)], [Work(30, 40)]);
        AssertWrong("'Draw' takes the desk at 29 while 'Dry' has it until 30", input, [Waited(0, 30)], [Work(29, 39)]);
    }
}
