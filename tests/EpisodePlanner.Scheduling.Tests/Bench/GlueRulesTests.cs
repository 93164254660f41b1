using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>When a wait may follow a stage without a gap. Source: the rules of the problem.</summary>
public sealed class GlueRulesTests
{
    private static readonly BenchStage Glue = Work("Glue", 60, Ann, Table);
    private static readonly BenchStage Sets = Wait("Glue sets", 600, Table) with { GluedTo = 0 };

    [Fact]
    public void Create_WaitGluedToWork_IsSound()
    {
        AssertSound(Glued(Glue, Sets));
        AssertSound(Glued(Glue, Sets) with { Links = [After(0, 1) with { AtMost = 0 }] });
        AssertSound(Glued(Glue, Sets, Work("Sand", 30, Ann)) with { Links = [After(0, 1), After(1, 2), After(0, 2)] });
    }

    [Fact]
    public void Create_HostIsNoWorkOfSomeMinutes_IsRefused()
    {
        AssertRefused(Glued(Glue with { Minutes = 0 }, Sets));
        AssertRefused(Glued(Print("Print", 60), Sets));
        AssertRefused(Glued(Wait("Delivery", 60), Sets));
        AssertRefused(Glued(Glue, Sets with { GluedTo = 7 }));
        AssertRefused(Glued(Glue, Sets with { GluedTo = -2 }));
        AssertRefused(Glued(Glue, Sets with { GluedTo = 1 }));
    }

    [Fact]
    public void Create_GluedStageIsNoPlainWait_IsRefused()
    {
        AssertRefused(Glued(Glue, Work("Glue sets", 30, Ann) with { GluedTo = 0 }));
        AssertRefused(Glued(Glue, Sets with { Modes = [new StageMode { Stations = [Table] }, new StageMode()] }));
        AssertRefused(Glued(Glue, Sets with { NotBefore = 1 }));
        AssertRefused(Glued(Glue, Sets with { Begun = true }));
    }

    [Fact]
    public void Create_OtherLinksThanItsGlue_AreRefused()
    {
        AssertRefused(Glued(Glue, Sets) with { Links = [] });
        AssertRefused(Glued(Glue, Sets) with { Links = [After(0, 1, lag: 5)] });
        AssertRefused(Glued(Glue, Sets) with { Links = [After(0, 1) with { LagHours = Presence }] });
        AssertRefused(Glued(Glue, Sets) with { Links = [new BenchLink(0, 1, LinkKind.TogetherStart)] });
        AssertRefused(Glued(Glue, Sets) with { Links = [After(0, 1), After(0, 1)] });
        AssertRefused(Glued(Glue, Sets, Work("Cut", 5, Ann)) with { Links = [After(0, 1), After(2, 1)] });
    }

    [Fact]
    public void Create_TwoWaitsGluedToOneStage_AreRefused()
    {
        var input = Glued(Glue, Sets, Sets with { Name = "Paint dries" }) with { Links = [After(0, 1), After(0, 2)] };
        Assert.Equal([Sentence("Glue sets"), Sentence("Paint dries")], Reasons(input));
    }

    private static BenchInput Glued(params BenchStage[] stages) => Input(stages) with { Links = [After(0, 1)] };

    private static string Sentence(string name) =>
        $"'{name}' can follow a stage without a gap only as a wait with one choice of places and no date, after one attended "
        + "stage of some minutes that no other wait is glued to, and linked to nothing but its finish.";

    private static IReadOnlyList<string> Reasons(BenchInput input) =>
        Assert.IsType<BenchProblemResult.Refused>(BenchProblem.Create(input)).Reasons;

    private static void AssertRefused(BenchInput input) => Assert.Equal([Sentence("Glue sets")], Reasons(input));

    private static void AssertSound(BenchInput input) => Assert.IsType<BenchProblemResult.Sound>(BenchProblem.Create(input));
}
