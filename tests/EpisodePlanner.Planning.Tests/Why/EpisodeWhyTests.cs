using EpisodePlanner.Planning.Tests.Demo;
using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Why;

/// <summary>What would bring an episode forward. Expected days are counted by hand on the evenings of the workshop.</summary>
public sealed class EpisodeWhyTests
{
    private static readonly Plan Gorse = GorseTests.CutAtWheelsOn();

    private static readonly EpisodeWhy WheelsOn = WhyOf(Gorse, "one");

    [Fact]
    public void WhatIf_SaturdayOpen_WinsADay()
    {
        // 36 h in evenings of 4 h: the ninth is Thursday 18 March, with Saturday the 13th it is Wednesday 17 March.
        var saturday = WhatIfSaying("on Saturdays too, 18:00 to 22:00");

        Assert.Equal((1, new LocalDate(2027, 3, 18)), (saturday.DaysWon, saturday.Date));
        Assert.Equal(24 * 60, saturday.MinutesWon);
    }

    [Fact]
    public void WhatIf_ATaskADayShorter_WinsADay()
    {
        // An open day has 4 h, so one evening less.
        var shorter = WhatIfSaying("“wheels on” takes 4 h less");

        Assert.Equal((1, new LocalDate(2027, 3, 18)), (shorter.DaysWon, shorter.Date));
    }

    [Fact]
    public void WhatIf_SecondHands_CannotShareOneTask()
    {
        // The work and the tail follow each other, so a second pair of hands wins nothing.
        Assert.Equal(0, WhatIfSaying("second pair of hands").DaysWon);
    }

    [Fact]
    public void Of_NoSuchEpisode_IsNull() => Assert.Null(EpisodeWhy.Of(Gorse, new Id("nobody"), stop: TestContext.Current.CancellationToken));

    [Fact]
    public void WhatIf_TheMostDaysFirst()
    {
        var days = WheelsOn.WhatIfs.Select(tried => tried.DaysWon ?? 0).ToList();

        Assert.NotEmpty(days);
        Assert.Equal(days.OrderDescending(), days);
    }

    [Fact]
    public void Of_EveryGain_IsThatOfAColdPlan()
    {
        // Property: the change, applied to the workshop and planned from nothing, gives the day that is claimed.
        var request = new PlanRequest(DemoSeed.Read("harbour-shed.json"), Instant.FromUtc(2026, 11, 25, 18, 0));
        var plan = Trial.Feasible(request);
        foreach (var episode in plan.Episodes.Where(episode => episode.Publish is not null).Take(3))
        {
            var why = WhyOf(plan, $"{episode.Id}");
            Assert.NotEmpty(why.WhatIfs);
            Assert.All(why.WhatIfs, tried => Assert.Equal(
                tried.Date, Cold(request, tried.Idea.Change).Episodes.Single(e => e.Id == episode.Id).Date));
            Assert.All(why.DayLater, waits => Assert.Equal(
                waits.CanWait, !UploadMoves.Between(plan, Cold(request, ADayLater(plan, waits))).Any(move => move.IsLater)));
        }
    }

    [Fact]
    public void Of_Stopped_TellsWhatWasTried()
    {
        var why = EpisodeWhy.Of(Gorse, new Id("one"), stop: new CancellationToken(canceled: true))!;

        Assert.Empty(why.WhatIfs);
        Assert.Empty(why.DayLater);
        Assert.NotEmpty(why.Episode.Chain);
    }

    internal static EpisodeWhy WhyOf(Plan plan, string episode) =>
        EpisodeWhy.Of(plan, new Id(episode), stop: TestContext.Current.CancellationToken)!;

    private static WhatIf WhatIfSaying(string words) =>
        Assert.Single(WheelsOn.WhatIfs, tried => tried.Idea.Says.Contains(words, StringComparison.Ordinal));

    private static Plan Cold(PlanRequest request, Change change) => Trial.Feasible(
        request with { Workshop = Assert.IsType<Applied>(Changes.Apply(request.Workshop, change)).Workshop });

    private static TaskChange ADayLater(Plan plan, DayLater waits) => new(
        waits.Task,
        plan.Request.Workshop.Tasks.Find(waits.Task)! with { NotBefore = waits.Starts.InZone(plan.Zone).Date.PlusDays(1) });
}
