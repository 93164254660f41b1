using EpisodePlanner.Planning.Tests.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class DifferencesTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 40)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Between_LeadsFromOneSoundWorkshopToAnother(int seed)
    {
        var (from, to) = (Wander(seed, 30), Wander(seed + 1_000, 30));
        // Told dates are kept for ever, so one that was said must be the same in both.
        to = to with { ToldDates = from.ToldDates };

        var between = Differences.Between(from, to);

        Assert.Equal(to, between is null ? from : Assert.IsType<Applied>(Changes.Apply(from, between)).Workshop);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Between_AnyTwoWorkshops_LeadsThereByReplay(int seed)
    {
        var from = new Generator(seed).Make<Workshop>() with { ToldDates = [] };
        var to = new Generator(seed + 1_000).Make<Workshop>() with { Demo = from.Demo, Format = from.Format };

        Assert.Equal(to, Changes.Replay(from, Differences.Between(from, to)!));
    }

    [Fact]
    public void Between_EqualWorkshops_IsNothing() =>
        Assert.Null(Differences.Between(Sound, Sound with { Tasks = Sound.Tasks.ToKeyed() }));

    [Fact]
    public void Between_ToldDatesThatTheOtherLacks_Stay()
    {
        Assert.Null(Differences.Between(Sound, Sound with { ToldDates = [] }));
        var other = Sound.ToldDates.Single() with { Id = Id("told-2") };

        var between = Differences.Between(Sound, Sound with { ToldDates = [other] })!;

        Assert.Equal(["told-1", "told-2"], ((Applied)Changes.Apply(Sound, between)).Workshop.ToldDates.Select(told => told.Id.ToString()));
    }

    [Fact]
    public void Between_TouchesOnlyWhatDiffers()
    {
        var sweep = Sound.Tasks.Find(Id("sweep"))!;
        var to = Sound with { Zone = "UTC", Accepted = null, Tasks = Sound.Tasks.With(sweep with { Note = "twice" }) };

        Assert.Equal(
            [Aggregate.About, Aggregate.Accepted, ThingKinds.Tasks.Of(sweep.Id)], Differences.Between(Sound, to)!.Touches());
    }

    private static Workshop Wander(int seed, int steps)
    {
        var changes = new RandomChange(new Random(seed));
        return Enumerable.Range(0, steps).Aggregate(Sound, (now, _) =>
            Changes.Apply(now, changes.Next(now)) is Applied made ? made.Workshop : now);
    }
}
