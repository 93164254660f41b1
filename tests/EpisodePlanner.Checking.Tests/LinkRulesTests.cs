using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class LinkRulesTests
{
    private static readonly SchedulePart[] First = [Work(10, 30)];

    [Theory]
    [InlineData(LinkKind.After, 0, 30)]
    [InlineData(LinkKind.After, 7, 37)]
    [InlineData(LinkKind.After, -5, 25)]
    [InlineData(LinkKind.TogetherStart, 0, 10)]
    [InlineData(LinkKind.TogetherStart, 7, 17)]
    [InlineData(LinkKind.TogetherFinish, 0, 18)]
    [InlineData(LinkKind.TogetherFinish, 7, 25)]
    [InlineData(LinkKind.StartToFinish, 5, 3)]
    [InlineData(LinkKind.StartToFinish, 20, 18)]
    public void Check_ElapsedLag_HoldsToTheMinute(LinkKind kind, int lag, int earliest)
    {
        var input = Linked(new BenchLink(0, 1, kind) { Lag = lag });
        AssertRight(input, First, [Work(earliest, earliest + 12)]);
        AssertWrong("'Sand' allows it not before", input, First, [Work(earliest - 1, earliest + 11)]);
    }

    [Fact]
    public void Check_WorkingLag_CountsOpenMinutes()
    {
        var input = Linked(new BenchLink(0, 1, LinkKind.After) { Lag = 15, LagHours = Open((0, 40), (60, 90)) });
        AssertRight(input, First, [Work(65, 77)]);
        AssertWrong("'Draw' starts at 64; 'Sand' allows it not before 65", input, First, [Work(64, 76)]);
    }

    [Fact]
    public void Check_WorkingLagThatNeverPasses_IsWrong() => AssertWrong(
        "allows it never",
        Linked(new BenchLink(0, 1, LinkKind.After) { Lag = 15, LagHours = Open((0, 40)) }),
        First,
        [Work(180, 192)]);

    [Fact]
    public void Check_StageWaitedForUnplaced_IsWrong() =>
        AssertWrong("'Draw' is placed although 'Sand'", Linked(new BenchLink(0, 1, LinkKind.StartToFinish)), [], [Work(0, 12)]);

    [Fact]
    public void Check_LinkIntoBegun_IsIgnored()
    {
        var input = Linked(new BenchLink(0, 1, LinkKind.After));
        input = input with { Stages = [input.Stages[0], input.Stages[1] with { Begun = true }] };
        AssertRight(input, First, [Work(0, 12)]);
        AssertRight(input, [], [Work(0, 12)]);
    }

    [Fact]
    public void Check_RunLinks_LeaveFromItsUnload()
    {
        var input = Input(Print("Print", 10, true), Attended("Draw", 12, Bob)) with
        {
            Links = [new BenchLink(0, 1, LinkKind.After)],
        };
        AssertRight(input, Printed(10, 10, 40), [Work(43, 55)]);
        AssertWrong("not before 43", input, Printed(10, 10, 40), [Work(42, 54)]);
    }

    [Theory]
    [InlineData(LinkKind.After, 35)]
    [InlineData(LinkKind.TogetherStart, 15)]
    [InlineData(LinkKind.TogetherFinish, 23)]
    [InlineData(LinkKind.StartToFinish, 3)]
    public void Check_GreatestLag_HoldsToTheMinute(LinkKind kind, int latest)
    {
        var input = Linked(new BenchLink(0, 1, kind) { Lag = -200, AtMost = 5 });
        AssertRight(input, First, [Work(latest, latest + 12)]);
        AssertWrong("6 minutes after 'Sand', more than 5", input, First, [Work(latest + 1, latest + 13)]);
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void AtMostBroken_OneEndIsGoingOn_IsToldButFeasible(bool first, bool second)
    {
        var input = Linked(new BenchLink(0, 1, LinkKind.After) { Lag = -200, AtMost = 5 });
        input = input with { Stages = [input.Stages[0] with { Begun = first }, input.Stages[1] with { Begun = second }] };
        Assert.Empty(ScheduleChecker.AtMostBroken(Schedule(input, First, [Work(35, 47)])));
        var late = Schedule(input, First, [Work(36, 48)]);
        var told = Assert.Single(ScheduleChecker.AtMostBroken(late));
        Assert.Contains("6 minutes after 'Sand', more than 5", told, StringComparison.Ordinal);
        Assert.Empty(ScheduleChecker.Check(late));
    }

    private static BenchInput Linked(BenchLink link) =>
        Input(Attended("Sand", 20, Ann), Attended("Draw", 12, Bob)) with { Links = [link] };
}
