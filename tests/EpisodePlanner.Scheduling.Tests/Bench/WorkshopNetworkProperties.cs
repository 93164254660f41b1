using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Tests.Networks;
using FsCheck.Xunit;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Source: the two definitions of a network must agree where nothing ever closes; no outside numbers.</summary>
[Properties(Arbitrary = [typeof(NetworkDrawing)], MaxTest = 2000)]
public sealed class WorkshopNetworkProperties
{
    [Property]
    public void Of_AlwaysOpen_AgreesWithTheCalendarFreeNetwork(DrawnNetwork drawn)
    {
        var problem = NetworkProblems.Of([.. drawn.Durations.Select((d, i) => new TextbookActivity($"a{i}", d))], drawn.Links);
        Agreement.Assert(Build.Times(drawn.Durations, drawn.Links), WorkshopNetwork.Of(problem));
    }

    [Fact]
    public void Critical_LinkAllowsLessThanZero_DoesNotDrive()
    {
        NetworkLink[] links = [new(0, 1, LinkKind.After, -5), new(0, 2, LinkKind.TogetherFinish, -5)];
        var problem = NetworkProblems.Of([new("two", 2), new("three", 3), new("nothing", 0)], links);
        Assert.Equal([false, true, false], WorkshopNetwork.Of(problem).Critical);
    }
}
