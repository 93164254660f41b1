using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class SittingRulesTests
{
    [Fact]
    public void Check_SettingUpAfterOpening_IsPaid()
    {
        var input = Input(Attended("Sand", 10, Ann, Bench));
        AssertRight(input, [Work(5, 15)]);
        AssertWrong("works at 4 without 5 minutes of setting up at the bench", input, [Work(4, 14)]);
        AssertRight(input, [Work(125, 135)]);
        AssertWrong("works at 124 without 5 minutes", input, [Work(124, 134)]);
    }

    [Fact]
    public void Check_TidyingBeforeClosing_IsPaid()
    {
        var input = Input(Attended("Sand", 10, Ann, Bench));
        AssertRight(input, [Work(87, 97)]);
        AssertWrong("works until 98 without 3 minutes of tidying at the bench", input, [Work(88, 98)]);
    }

    [Fact]
    public void Check_PlaceOpensLater_IsSetUpThen()
    {
        var input = Input(Attended("Sand", 10, Bob, Shed));
        AssertRight(input, [Work(22, 32)]);
        AssertWrong("works at 21 without 2 minutes of setting up at the shed", input, [Work(21, 31)]);
    }

    [Fact]
    public void Check_SamePlaceAgain_IsOneSitting()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Oil", 10, Bob, Bench));
        AssertRight(input, [Work(5, 15)], [Work(15, 25)]);
        AssertRight(input, [Work(5, 15)], [Work(90, 100)]);
    }

    [Fact]
    public void Check_SamePlaceInTheNextOpening_IsSetUpAgain()
    {
        var input = Input(Attended("Sand", 20, Ann, Bench));
        AssertRight(input, [Work(87, 97), Work(125, 135)]);
        AssertWrong("works at 120 without 5 minutes", input, [Work(87, 97), Work(120, 130)]);
        AssertWrong("works until 100 without 3 minutes", input, [Work(90, 100), Work(125, 135)]);
    }

    [Fact]
    public void Check_PlaceToPlace_IsTidiedAndSetUp()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Weld", 10, Bob, Shed));
        AssertRight(input, [Work(30, 40)], [Work(45, 55)]);
        AssertWrong(
            "'Weld' works at 44, too soon for Bob after 'Sand' at 40: tidying and setting up take 5",
            input,
            [Work(30, 40)],
            [Work(44, 54)]);
        AssertRight(input, [Work(46, 56)], [Work(30, 40)]);
        AssertWrong("'Sand' works at 45, too soon for Bob", input, [Work(45, 55)], [Work(30, 40)]);
    }

    [Fact]
    public void Check_WorkWithoutPlace_KeepsClear()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Draw", 10, Bob));
        AssertRight(input, [Work(30, 40)], [Work(43, 53)]);
        AssertWrong("'Draw' works at 42", input, [Work(30, 40)], [Work(42, 52)]);
        AssertRight(input, [Work(30, 40)], [Work(15, 25)]);
        AssertWrong("'Sand' works at 30", input, [Work(30, 40)], [Work(16, 26)]);
    }

    [Fact]
    public void Check_OthersBetween_EndsTheSitting()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Draw", 10, Bob), Attended("Oil", 10, Bob, Bench));
        AssertRight(input, [Work(5, 15)], [Work(18, 28)], [Work(33, 43)]);
        AssertWrong("'Oil' works at 32", input, [Work(5, 15)], [Work(18, 28)], [Work(32, 42)]);
    }

    [Fact]
    public void Check_OtherPeople_DoNotMatter()
    {
        var input = Input(Attended("Sand", 10, Bob, Bench), Attended("Draw", 10, Ann));
        AssertRight(input, [Work(30, 40)], [Work(20, 30)]);
    }
}
