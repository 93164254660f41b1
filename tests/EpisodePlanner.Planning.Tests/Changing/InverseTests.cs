namespace EpisodePlanner.Planning.Tests;

public class InverseTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Apply_InverseRestoresTheWorkshop(int seed)
    {
        var changes = new RandomChange(new Random(seed));
        var workshop = Sample.Sound;
        var applied = 0;
        for (var i = 0; i < 500; i++)
        {
            if (Changes.Apply(workshop, changes.Next(workshop)) is Applied made)
            {
                AssertUndone(workshop, made);
                workshop = made.Workshop;
                applied++;
            }
        }

        Assert.InRange(applied, 100, 490);
    }

    [Fact]
    public void Apply_InversesInReverseLeadBackToTheStart()
    {
        var changes = new RandomChange(new Random(4));
        var workshop = Sample.Sound;
        var undos = new Stack<Change>();
        for (var i = 0; i < 300; i++)
        {
            if (Changes.Apply(workshop, changes.Next(workshop)) is Applied made)
            {
                workshop = made.Workshop;
                undos.Push(made.Inverse);
            }
        }

        workshop = undos.Aggregate(workshop, (now, undo) => Assert.IsType<Applied>(Changes.Apply(now, undo)).Workshop);

        Assert.Equal(Sample.Sound, workshop);
    }

    [Fact]
    public void Apply_EveryKindIsMadeAndUndone()
    {
        var changes = new RandomChange(new Random(5));
        for (var kind = 0; kind < RandomChange.Kinds; kind++)
        {
            var results = Enumerable.Range(0, 40).Select(_ => Changes.Apply(Sample.Sound, changes.Single(Sample.Sound, kind)));
            var made = results.OfType<Applied>().ToArray();
            Assert.True(made.Length > 0, $"kind {kind} is never made");
            Assert.All(made, one => AssertUndone(Sample.Sound, one));
        }
    }

    private static void AssertUndone(Workshop before, Applied made)
    {
        Assert.Empty(WorkshopRules.Check(made.Workshop));
        var undone = Assert.IsType<Applied>(Changes.Apply(made.Workshop, made.Inverse));
        Assert.Equal(before, undone.Workshop);
        Assert.Equal(made.Workshop, Assert.IsType<Applied>(Changes.Apply(undone.Workshop, undone.Inverse)).Workshop);
    }
}
