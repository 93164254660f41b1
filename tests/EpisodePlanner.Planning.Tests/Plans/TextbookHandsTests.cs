using EpisodePlanner.Checking.Textbook;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Textbook networks with few hands, every activity by one of them. Least ends: computed, proved optimal with an
/// independent solver.
/// </summary>
public sealed class TextbookHandsTests
{
    [Fact]
    public void Make_ReliableWithOnePerson_EndsAfterAllTheHours() =>
        Assert.Equal(79 * 60, TextbookWorkshops.Plan(TextbookNetworks.ReliableConstruction, 1).Schedule.End);

    [Fact]
    public void Make_PortaVacWithOnePerson_EndsAfterAllTheHours() =>
        Assert.Equal(32 * 60, TextbookWorkshops.Plan(TextbookNetworks.PortaVac, 1).Schedule.End);

    [Theory]
    [InlineData(2, 48)]
    [InlineData(3, 44)]
    public void Make_ReliableWithPeople_NeverBeatsTheLeast(int people, int least) =>
        AssertNear(TextbookNetworks.ReliableConstruction, people, least);

    [Theory]
    [InlineData(2, 19)]
    [InlineData(3, 17)]
    public void Make_PortaVacWithPeople_NeverBeatsTheLeast(int people, int least) =>
        AssertNear(TextbookNetworks.PortaVac, people, least);

    /// <summary>Not below the least, and above it by a tenth at most.</summary>
    private static void AssertNear(TextbookNetwork network, int people, int least) =>
        Assert.InRange(TextbookWorkshops.Plan(network, people).Schedule.End, least * 60, least * 66);
}
