using EpisodePlanner.Checking.Textbook;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// Textbook networks in which every activity needs one of few hands. Source of the ends: computed, proved optimal with a
/// general constraint solver; the networks are those of <see cref="TextbookNetworks"/>. With one pair of hands every
/// schedule without idling is best; with more none may be shorter than the optimum, and a tenth more is our own goal.
/// </summary>
public sealed class LimitedHandsTests
{
    [Theory]
    [InlineData("Reliable Construction Co.", 79)] // computed
    [InlineData("Porta-Vac", 32)] // computed
    public void End_OnePairOfHands_IsTheWholeWork(string name, int optimum) => Assert.Equal(optimum, End(name, 1));

    [Theory]
    [InlineData("Reliable Construction Co.", 2, 48)] // computed, proved optimal
    [InlineData("Reliable Construction Co.", 3, 44)] // computed, proved optimal; 44 is published as the end without limits
    [InlineData("Porta-Vac", 2, 19)] // computed, proved optimal
    [InlineData("Porta-Vac", 3, 17)] // computed, proved optimal; 17 is published as the end without limits
    public void End_MoreHands_IsNotBelowTheOptimumAndWithinATenth(string name, int hands, int optimum) =>
        Assert.InRange(End(name, hands), optimum, optimum + (optimum / 10));

    private static int End(string name, int hands)
    {
        var textbook = TextbookNetworks.All.Single(network => network.Name == name);
        var found = Sound.Search(NetworkProblems.Of(textbook, hands), schedules: 200);
        Assert.Equal(textbook.Activities.Count, found.Schedule.Order.Count);
        return found.Schedule.End;
    }
}
