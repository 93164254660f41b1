using System.Text;
using EpisodePlanner.Planning.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class ToldDateTests
{
    private static readonly ToldDate First = Sound.ToldDates.Single();
    private static readonly ToldDate Second = First with { Id = Id("told-2"), Date = Day(2, 13) };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Apply_RemovedOrAltered_IsRefused(bool removed)
    {
        var change = new ToldDateChange(First.Id, removed ? null : First with { Date = Day(2, 13) });

        var refused = Assert.IsType<Refused>(Changes.Apply(Sound, change));

        var says = "A told date is kept for ever, as it was said; leave it, and add the new date beside it.";
        Assert.Equal([new Reason("$.toldDates['told-1']", says)], refused.Reasons);
    }

    [Fact]
    public void Apply_UndoOfItsAddition_TakesItBack()
    {
        var applied = Apply(Sound, new ToldDateChange(Second.Id, Second));
        var undone = Apply(applied.Workshop, applied.Inverse);

        Assert.Equal(Sound, undone.Workshop);
        Assert.Equal(applied.Workshop, Apply(undone.Workshop, undone.Inverse).Workshop);
    }

    [Fact]
    public void Apply_UndoOfAnotherToldDate_IsRefused()
    {
        var undo = Apply(Sound, new ToldDateChange(Second.Id, Second)).Inverse;
        var other = Sound with { ToldDates = [First, Second with { To = "a sponsor" }] };

        Assert.IsType<Refused>(Changes.Apply(Sound, undo));
        Assert.IsType<Refused>(Changes.Apply(other, undo));
    }

    [Fact]
    public void ToldDateTakenBack_ComesBackFromItsStoredText()
    {
        var undo = Apply(Sound, new ToldDateChange(Second.Id, Second)).Inverse;

        var bytes = ChangeFile.Write(undo);

        Assert.StartsWith("{\"kind\":\"toldDateTakenBack\"", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.Equal(undo, ChangeFile.ReadStored(bytes).Thing);
    }

    private static Applied Apply(Workshop workshop, Change change) =>
        Assert.IsType<Applied>(Changes.Apply(workshop, change));
}
