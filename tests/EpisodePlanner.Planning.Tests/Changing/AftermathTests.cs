using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class AftermathTests
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void ChangedSince_JustAfterTheChange_IsNothing(int seed)
    {
        var changes = new RandomChange(new Random(seed));
        var workshop = Sound;
        for (var i = 0; i < 300; i++)
        {
            var change = changes.Next(workshop);
            if (Changes.Apply(workshop, change) is Applied made)
            {
                Assert.Empty(Aftermath.ChangedSince(change, made.Workshop));
                Assert.Empty(Aftermath.ChangedSince(made.Inverse, workshop));
                Assert.Equal(made.Workshop, Changes.Replay(workshop, change));
                workshop = made.Workshop;
            }
        }
    }

    [Fact]
    public void ChangedSince_NamesEachThingOnce()
    {
        var change = new Batch(
            [
                new NameChange("Shed"),
                new ZoneChange("UTC"),
                new TaskChange(Sweep.Id, null),
                new TaskChange(Sweep.Id, Sweep with { Note = "once" }),
            ]);

        Assert.Equal([Aggregate.About, ThingKinds.Tasks.Of(Sweep.Id)], Aftermath.ChangedSince(change, Sound));
        Assert.Equal([Aggregate.About], Aftermath.ChangedSince(change, ((Applied)Changes.Apply(Sound, change)).Workshop with { Name = "Barn" }));
    }

    [Fact]
    public void ChangedSince_NameAndZoneAreTwoThings()
    {
        Assert.Empty(Aftermath.ChangedSince(new NameChange("Shed"), Sound with { Name = "Shed", Zone = "UTC" }));
        Assert.Equal([Aggregate.About], Aftermath.ChangedSince(new ZoneChange("UTC"), Sound with { Name = "Shed" }));
    }

    [Fact]
    public void ChangedSince_ChangedAndPutBack_IsNothing() =>
        Assert.Empty(Aftermath.ChangedSince(new TaskChange(Sweep.Id, Sweep), Sound));

    [Fact]
    public void Replay_OfWhatCantHaveBeenMadeFromHere_IsNull() =>
        Assert.Null(Changes.Replay(Sound, new TaskChange(Id("ghost"), null)));
}
