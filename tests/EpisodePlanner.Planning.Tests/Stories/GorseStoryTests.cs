using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>The rail trolley's cuts, proposed. Acceptance answers: the project's scenario 2.</summary>
public sealed class GorseStoryTests
{
    private static readonly Id Gorse = new("gorse");

    [Fact]
    public void Of_Uncut_CutsAtBoth()
    {
        var answer = GorseTests.Uncut().Answer();

        var cuts = answer.Cuts!;
        Assert.True(answer.IsWhole);
        Assert.Equal(
            [new LocalDate(2027, 3, 19), new LocalDate(2027, 4, 3), new LocalDate(2027, 4, 17)], cuts.Then.Days("gorse"));
        Assert.Empty(cuts.Then.Outlook("gorse").Alarms);
        Assert.Equal(32m, cuts.Difference.HoursMore);
        Assert.Equal(10, Assert.Single(cuts.Difference.Outlooks, change => change.Before.Series == Gorse).FinaleLater);
        Assert.Equal((11, 0), cuts.DaysOver);
    }

    /// <summary>One cut is enough where its episode waits four days: 17 days, then the promise to the day.</summary>
    [Fact]
    public void Of_Uncut_HoldsBackWithOneCut()
    {
        var held = GorseTests.Uncut().Answer().Held!;

        Assert.Equal([new LocalDate(2027, 3, 23), new LocalDate(2027, 4, 13)], held.Then.Days("gorse"));
        Assert.Equal([17, 21], held.Then.Outlook("gorse").Forecast.Take(2).Select(silence => silence.Days));
        Assert.Empty(held.Then.Outlook("gorse").Alarms);
        Assert.Equal(16m, held.Difference.HoursMore);
    }

    [Fact]
    public void Of_Uncut_SaysWhatOneCutDoes()
    {
        var places = GorseTests.Uncut().Places("gorse");

        Assert.Equal(["wheels on", "brakes", "rides"], places.Select(place => place.Milestone.Name));
        Assert.Equal([false, false, true], places.Select(place => place.IsCut));
        var one = places[0].Proposal!;
        Assert.Equal([new LocalDate(2027, 3, 19), new LocalDate(2027, 4, 13)], one.Then.Days("gorse"));
        Assert.Equal([13, 25], one.Then.Outlook("gorse").Forecast.Take(2).Select(silence => silence.Days));
        Assert.Equal(4, one.Then.Outlook("gorse").Alarms[0].DaysOver);
        Assert.Equal(16m, one.Difference.HoursMore);
        Assert.Equal((11, 4), one.WorstOver);
        Assert.Null(places[2].Proposal);
    }

    [Fact]
    public void Of_Taken_IsTheColdPlanOfTheChangedWorkshop()
    {
        var plan = GorseTests.Uncut();
        var best = plan.Answer().Best!;

        var taken = Assert.IsType<Applied>(Changes.Apply(plan.Request.Workshop, best.Change));
        Assert.Equal(plan.Cold(best.Change).Days("gorse"), best.Then.Days("gorse"));
        Assert.Equal(plan.Request.Workshop, Assert.IsType<Applied>(Changes.Apply(taken.Workshop, taken.Inverse)).Workshop);
    }

    [Fact]
    public void Of_CutAtBoth_ProposesNoOtherCuts()
    {
        Assert.Null(GorseTests.CutAtBoth().Answer().Cuts);
    }
}
