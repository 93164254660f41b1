using EpisodePlanner.Planning.Tests.Plans;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>Asks for proposals, stopped with the test.</summary>
internal static class StoryReading
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static StoryAnswer Answer(this Plan plan, int? plans = null) => StoryAnswer.Of(plan, plans, stop: Stop);

    public static ValueList<CutPlace> Places(this Plan plan, string series) => CutPlaces.Of(plan, new Id(series), stop: Stop)!;

    public static ValueList<StoryProposal> Others(this Plan plan, string series) => OtherEpisodes.Of(plan, new Id(series), Stop);

    /// <summary>The plan of the workshop that a change gives, made from nothing else and checked.</summary>
    public static Plan Cold(this Plan plan, Change change) =>
        Trial.Feasible(plan.Request with { Workshop = Assert.IsType<Applied>(Changes.Apply(plan.Request.Workshop, change)).Workshop });
}
