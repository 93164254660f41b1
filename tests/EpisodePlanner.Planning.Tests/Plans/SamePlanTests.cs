using System.Text;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Planning.Tests.Demo;
using EpisodePlanner.Planning.Tests.Files;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>The same inputs give the same plan.</summary>
public sealed class SamePlanTests
{
    private static readonly Workshop Shed = DemoSeed.Read("harbour-shed.json");

    private static Instant Morning => Shed.Demo!.Anchor.At(new LocalTime(8, 0))
        .InZoneStrictly(DateTimeZoneProviders.Tzdb[Shed.Zone]).ToInstant();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Make_ArraysShuffled_MovesNoDate(int seed)
    {
        var shuffled = new Shuffling(seed).Shuffle(Shed);

        Assert.Equal(
            PlanLines.Dates(Trial.Feasible(new PlanRequest(Shed, Morning))),
            PlanLines.Dates(Trial.Feasible(new PlanRequest(shuffled, Morning))));
    }

    [Fact]
    public void Make_SameRequest_SamePlanToTheBit()
    {
        var request = new PlanRequest(Shed, Morning);

        Assert.Equal(PlanLines.All(Trial.Feasible(request)), PlanLines.All(Trial.Feasible(request)));
    }

    [Fact]
    public void Make_OtherSeed_StillFeasible() =>
        Assert.NotEmpty(Trial.Feasible(new PlanRequest(Shed, Morning) { Seed = 7, Schedules = 40 }).Stages);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(59, 999)]
    public void Make_PlannedAtWithSeconds_IsFloored(int seconds, int milliseconds)
    {
        var later = Morning + Duration.FromSeconds(seconds) + Duration.FromMilliseconds(milliseconds);
        var plan = Trial.Feasible(new PlanRequest(Shed, later));

        Assert.Equal(Morning, plan.Request.PlannedAt);
        Assert.Equal(PlanLines.All(Trial.Feasible(new PlanRequest(Shed, Morning))), PlanLines.All(plan));
    }

    [Fact]
    public void Make_ReadBackFromItsFile_SamePlan()
    {
        var again = Trial.Read(Encoding.UTF8.GetString(WorkshopFile.Write(Shed)));

        Assert.Equal(
            PlanLines.All(Trial.Feasible(new PlanRequest(Shed, Morning))),
            PlanLines.All(Trial.Feasible(new PlanRequest(again, Morning))));
    }
}
