using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Every sentence with which a problem is refused. Source: the rules of the problem.</summary>
public sealed class BenchRulesTests
{
    private static readonly BenchStage Sand = Work("Sand", 60, Ann);
    private static readonly BenchStage Deck = Print("Deck", 60);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(IntervalCalendar.MaximumMinute + 1)]
    [InlineData(int.MaxValue)]
    [InlineData(int.MinValue)]
    public void Create_Horizon_LiesInRange(int horizon) => AssertRefused(
        $"The horizon of {horizon} minutes must lie between 1 and {IntervalCalendar.MaximumMinute}.",
        Input(Sand) with { Horizon = horizon });

    [Fact]
    public void Create_Minutes_AreNeitherNegativeNorAbsurd()
    {
        var sentence = $"has minutes below 0 or more than any plan can hold ({IntervalCalendar.MaximumMinute}).";
        AssertRefused($"'Sand' {sentence}", Input(Sand with { Minutes = -1 }));
        AssertRefused($"'Sand' {sentence}", Input(Sand with { NotBefore = -1 }));
        AssertRefused($"'Deck' {sentence}", Input(Deck with { LoadMinutes = -1 }));
        AssertRefused($"'Deck' {sentence}", Input(Deck with { UnloadMinutes = -1 }));
        AssertRefused($"'Sand' {sentence}", Input(Sand with { Minutes = IntervalCalendar.MaximumMinute + 1 }));
        AssertRefused($"'Deck' {sentence}", Input(Deck with { Minutes = int.MaxValue, FitMinutes = int.MaxValue }));
        AssertSound(Input(Sand with { Minutes = IntervalCalendar.MaximumMinute, NotBefore = int.MaxValue }));
    }

    [Fact]
    public void Create_Run_FitsIntoItsOwnMinutes()
    {
        AssertRefused("'Deck' must fit into at least its own 60 minutes, not 59.", Input(Deck with { FitMinutes = 59 }));
        AssertSound(Input(Deck with { FitMinutes = 60 }));
    }

    [Fact]
    public void Create_NoModes_IsRefused() => AssertRefused("'Sand' has no choice of stations.", Input(Sand with { Modes = [] }));

    [Fact]
    public void Create_HandsForNoMinutes_AreRefused()
    {
        const string sentence = "'Deck' can't take hands for a load or unload of no minutes.";
        AssertRefused(sentence, Input(Deck with { LoadMinutes = 0, LoadTakesHands = true }));
        AssertRefused(sentence, Input(Deck with { UnloadMinutes = 0, UnloadTakesHands = true }));
        AssertSound(Input(Deck with { LoadMinutes = 0, UnloadMinutes = 0 }));
    }

    [Theory]
    [InlineData(6)]
    [InlineData(-1)]
    public void Create_UnknownStation_IsRefused(int station) => AssertRefused(
        "'Sand' refers to a station or a limit that does not exist, or to a station twice.", Input(Work("Sand", 60, station)));

    [Fact]
    public void Create_StationTwiceOrUnknownLimit_IsRefused()
    {
        const string sentence = "'Sand' refers to a station or a limit that does not exist, or to a station twice.";
        AssertRefused(sentence, Input(Work("Sand", 60, Ann, Ann)));
        AssertRefused(sentence, Input(Sand with { Modes = [new StageMode { Stations = [Ann], Limits = [1] }] }));
        AssertSound(Input(Sand with { Modes = [new StageMode { Stations = [Ann], Limits = [0] }] }));
    }

    [Fact]
    public void Create_Machine_IsNamedByRunsAlone()
    {
        const string sentence = "must name one machine beside its other stations if it is a run, and none if it is not.";
        AssertRefused($"'Deck' {sentence}", Input(Deck with { Modes = [new StageMode()] }));
        AssertRefused($"'Deck' {sentence}", Input(Deck with { Modes = [new StageMode { Machine = 6 }] }));
        AssertRefused($"'Deck' {sentence}", Input(Deck with { Modes = [new StageMode { Machine = Printer, Stations = [Printer] }] }));
        AssertRefused($"'Sand' {sentence}", Input(Sand with { Modes = [new StageMode { Stations = [Ann], Machine = Mill }] }));
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(-1, 1)]
    public void Create_LinkOfUnknownStages_IsRefused(int from, int to) => AssertRefused(
        $"A link leads from {from} to {to}; there are 2 stages.", Input(Sand, Deck) with { Links = [After(from, to)] });

    [Fact]
    public void Create_LagTooLargeOrNegativeInOpenMinutes_IsRefused()
    {
        const int Most = IntervalCalendar.MaximumMinute;
        const string Sentence = "minutes before 'Deck' is too large, or negative in open minutes.";
        AssertRefused($"The lag of {Most + 1} {Sentence}", Linked(After(0, 1, Most + 1)));
        AssertRefused($"The lag of {-Most - 1} {Sentence}", Linked(After(0, 1, -Most - 1)));
        AssertRefused($"The lag of -1 {Sentence}", Linked(After(0, 1, -1) with { LagHours = Presence }));
        AssertSound(Linked(After(0, 1, -1)));
    }

    [Theory]
    [InlineData(int.MaxValue)]
    [InlineData(int.MinValue)]
    [InlineData(IntervalCalendar.MaximumMinute + 1)]
    public void Create_LagsAtTheLimitsOfNumbers_AreRefusedNotWrapped(int lag)
    {
        AssertRefused($"The lag of {lag} minutes before 'Deck' is too large, or negative in open minutes.", Linked(After(0, 1, lag)));
        AssertRefused($"The greatest lag of {lag} minutes before 'Deck' is too large.", Linked(After(0, 1) with { AtMost = lag }));
    }

    [Fact]
    public void Create_LargestHorizonAndLags_StayInRange()
    {
        var most = IntervalCalendar.MaximumMinute;
        var far = Linked(After(0, 1, most) with { AtMost = most }) with { Horizon = most };
        Assert.Equal([0], Sound.Schedule(far).Order);
    }

    [Fact]
    public void Create_Circle_NamesItsMembersInOrder()
    {
        var input = Input(Sand, Work("Cut", 5, Ann), Work("Glue", 5, Ann), Work("Paint", 5, Ann), Work("Pack", 5, Ann)) with
        {
            // Cut → Paint → Glue → Cut; Sand leads into it and Pack hangs behind it.
            Links = [After(0, 1), After(1, 3), After(3, 2), After(2, 1), After(2, 4)],
        };
        AssertRefused("These stages wait for each other in a circle: Paint → Glue → Cut → Paint.", input);
    }

    [Fact]
    public void Create_LinkToItself_IsACircle() => AssertRefused(
        "These stages wait for each other in a circle: Sand → Sand.", Input(Sand) with { Links = [After(0, 0)] });

    [Fact]
    public void Create_SeveralThingsWrong_NamesThemAll() =>
        Assert.Equal(3, Reasons(Input(Sand with { Minutes = -1 }, Deck with { Modes = [] }) with { Links = [After(0, 7)] }).Count);

    [Fact]
    public void Create_NothingToDo_IsSound() => Assert.Equal(0, Sound.Schedule(Input()).End);

    private static BenchInput Linked(BenchLink link) => Input(Sand, Deck) with { Links = [link] };

    private static IReadOnlyList<string> Reasons(BenchInput input) =>
        Assert.IsType<BenchProblemResult.Refused>(BenchProblem.Create(input)).Reasons;

    private static void AssertRefused(string sentence, BenchInput input) => Assert.Equal([sentence], Reasons(input));

    private static void AssertSound(BenchInput input) => Assert.IsType<BenchProblemResult.Sound>(BenchProblem.Create(input));
}
