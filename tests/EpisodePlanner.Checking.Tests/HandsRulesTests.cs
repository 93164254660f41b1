using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

/// <summary>
/// Loads and unloads by hand are work at no place: they are not set up for, but end the sitting before. Work that was
/// going on at minute 0 is set up already.
/// </summary>
public sealed class HandsRulesTests
{
    private static readonly BenchStage Sand = Attended("Sand", 10, Bob, Bench);
    private static readonly BenchStage Oil = Attended("Oil", 10, Bob, Bench);
    private static readonly BenchStage Loaded = Print("Print", 60, true, Bob, Bench) with { LoadTakesHands = true };
    private static readonly BenchStage Unloaded = Print("Print", 60, true, Bob, Bench) with { UnloadTakesHands = true };

    [Fact]
    public void Check_LoadAtAPlace_NeedsNoSettingUpNorTidying()
    {
        AssertRight(Input(Loaded), Printed(0, 60, 70));
        var ann = Print("Print", 10, true, Ann, Bench) with { LoadTakesHands = true };
        AssertRight(Input(ann), Printed(98, 10, 120));
    }

    [Fact]
    public void Check_LoadAfterWork_WaitsForItsTidying()
    {
        AssertRight(Input(Sand, Loaded), [Work(30, 40)], Printed(43, 60, 120));
        AssertWrong("'Print' works at 42, too soon for Bob after 'Sand' at 40", Input(Sand, Loaded), [Work(30, 40)], Printed(42, 60, 120));
    }

    [Fact]
    public void Check_WorkAfterLoad_IsSetUpAgain()
    {
        var input = Input(Sand, Loaded, Oil);
        AssertRight(input, [Work(5, 15)], Printed(18, 60, 80), [Work(25, 35)]);
        AssertWrong("'Oil' works at 24, too soon for Bob after 'Print' at 20", input, [Work(5, 15)], Printed(18, 60, 80), [Work(24, 34)]);
    }

    [Fact]
    public void Check_UnloadBetweenWork_EndsTheSitting()
    {
        var input = Input(Sand, Unloaded, Oil);
        AssertRight(input, [Work(85, 95)], Printed(10, 60, 98), [Work(106, 116)]);
        AssertWrong("'Print' works at 97, too soon for Bob", input, [Work(85, 95)], Printed(10, 60, 97), [Work(106, 116)]);
        AssertWrong("'Oil' works at 105, too soon for Bob", input, [Work(85, 95)], Printed(10, 60, 98), [Work(105, 115)]);
    }

    [Fact]
    public void Check_UnloadInsideWork_TakesTheHands() => AssertWrong(
        "takes Bob at 80 while 'Sand' has it until 85", 2, Input(Sand, Unloaded), [Work(75, 85)], Printed(10, 60, 80));

    [Fact]
    public void Check_TouchBetweenWork_EndsNoSitting()
    {
        var touched = Print("Print", 60, true, Bob, Bench);
        AssertRight(Input(Sand, touched, Oil), [Work(5, 15)], Printed(15, 60, 80), [Work(17, 27)]);
    }

    [Fact]
    public void Check_BegunWork_IsSetUpAlready()
    {
        var begun = Sand with { Begun = true };
        AssertRight(Input(begun), [Work(0, 10)]);
        AssertRight(Input(begun, Oil), [Work(0, 10)], [Work(10, 20)]);
        AssertWrong("works at 0 without 5 minutes of setting up", Input(Sand), [Work(0, 10)]);
    }

    [Fact]
    public void Check_BegunWorkWhereThePlaceOpensLater_IsSetUpThen()
    {
        var begun = Attended("Weld", 10, Bob, Shed) with { Begun = true };
        AssertRight(Input(begun), [Work(22, 32)]);
        AssertWrong("works at 21 without 2 minutes of setting up at the shed", Input(begun), [Work(21, 31)]);
    }
}
