using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>What a kite's first plan could do against its silence. Acceptance answers: the project's scenario 9.</summary>
public sealed class FirstAnswerStoryTests
{
    private static readonly Id Kite = new("kite");

    [Fact]
    public void Of_Uncut_CutsAfterWeld()
    {
        var place = Uncut().Places("kite")[0];

        Assert.Equal("weld", place.Milestone.Name);
        Assert.Equal(new LocalDate(2027, 6, 11), place.Proposal!.Then.Days("kite").First());
        Assert.Equal(39, place.Proposal.Then.Outlook("kite").Forecast[0].Days);
    }

    [Fact]
    public void Of_FromFootage_NeedsItsTailOnly()
    {
        var proposal = Assert.Single(Uncut().Others("kite"));

        Assert.Equal(StoryMove.FromFootage, proposal.Move);
        Assert.Equal(new LocalDate(2027, 5, 28), proposal.Then.Days("kite").First());
        Assert.Equal(25, proposal.Then.Outlook("kite").Forecast[0].Days);
    }

    [Fact]
    public void Of_LastSlot_SaysWhatThereIsTimeFor()
    {
        var last = LastSlot.Of(Uncut(), Kite)!;

        Assert.Equal(new LocalDate(2027, 5, 24), last.DueBy);
        Assert.Equal(new LocalDate(2027, 5, 21), last.Slot!.LocalOpening.Date);
        Assert.Equal(12 * 60, last.OpenMinutes);
        Assert.Equal(4 * 60, last.MinutesToFind);
    }

    private static Plan Uncut() => Trial.Plan(FirstAnswerTests.File(""), FirstAnswerTests.Now);
}
