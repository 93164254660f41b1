using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;
using static EpisodePlanner.Scheduling.Tests.Packed.PlainProblems;

namespace EpisodePlanner.Scheduling.Tests.Packed;

/// <summary>Source: the rules in the documentation of the problem; no outside numbers.</summary>
public sealed class PackedProblemTests
{
    private static readonly PackedInput Two = OneStation(1, [3, 4]);

    [Fact]
    public void Create_SoundInput_KnowsItsHorizon()
    {
        var problem = Sound(OneStation(1, [3, 4], new NetworkLink(0, 1, LinkKind.After, 5)));
        Assert.Equal((2, 12), (problem.Count, problem.Horizon));
    }

    [Fact]
    public void Create_NothingAtAll_IsSound() => Assert.Equal(0, Sound(OneStation(1, [])).Count);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Create_NoCapacity_IsRefused(int capacity) =>
        Assert.Contains("capacity", Reasons(Two with { Stations = [new PackedStation("hands", capacity)] })[0]);

    [Fact]
    public void Create_DemandBeyondCapacity_IsRefusedWithItsName() =>
        Assert.Equal("'a1' takes 2 of 'hands'; it can take 0 to 1.", Assert.Single(Reasons(Two with { Demands = [[1], [2]] })));

    [Fact]
    public void Create_NegativeDemand_IsRefused() => Assert.Single(Reasons(Two with { Demands = [[1], [-1]] }));

    [Fact]
    public void Create_DemandsOfAnotherLength_AreRefused()
    {
        Assert.Single(Reasons(Two with { Demands = [[1]] }));
        Assert.Single(Reasons(Two with { Demands = [[1], [1, 1]] }));
    }

    [Theory]
    [InlineData(LinkKind.TogetherStart)]
    [InlineData(LinkKind.TogetherFinish)]
    [InlineData(LinkKind.StartToFinish)]
    public void Create_OtherKindsOfLink_AreRefused(LinkKind kind) =>
        Assert.Contains("only start after", Assert.Single(Reasons(OneStation(1, [3, 4], new NetworkLink(0, 1, kind)))));

    [Fact]
    public void Create_NegativeLag_IsRefused() =>
        Assert.Contains("-1", Assert.Single(Reasons(OneStation(1, [3, 4], new NetworkLink(0, 1, LinkKind.After, -1)))));

    [Fact]
    public void Create_HorizonTooLarge_IsRefusedAndNeverWrapped()
    {
        Assert.Equal(PackedProblem.LargestHorizon, Sound(OneStation(1, [PackedProblem.LargestHorizon])).Horizon);
        Assert.Contains("coarser unit", Assert.Single(Reasons(OneStation(1, [PackedProblem.LargestHorizon, 1]))));
        Assert.Contains("coarser unit", Assert.Single(Reasons(OneStation(1, [1L << 33, 1L << 33]))));
        Assert.Contains("coarser unit", Assert.Single(Reasons(OneStation(1, [1, 1], new NetworkLink(0, 1, LinkKind.After, 1L << 60)))));
    }

    [Fact]
    public void Create_SeveralReasons_TellsAll() =>
        Assert.Equal(2, Reasons(OneStation(1, [3, 4], new NetworkLink(0, 1, LinkKind.After, -1)) with { Demands = [[1], [2]] }).Count);

    [Fact]
    public void FromStarts_OtherLength_Throws() =>
        Assert.Throws<ArgumentException>(() => PackedSchedule.FromStarts(Sound(Two), [1]));
}
