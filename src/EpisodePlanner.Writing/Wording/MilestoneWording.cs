using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What a milestone is to the story, in sentences.</summary>
internal static class MilestoneWording
{
    public static Sentence Payoff(Milestone milestone) => milestone.Payoff
        ? Say.From($"A payoff: the episode may end here.", Fact.Of(milestone))
        : Say.From($"No payoff of its own: the story goes on from here.", Fact.Of(milestone));

    public static IEnumerable<Sentence> Screen(Milestone milestone) => milestone.ScreenMinutes is { } screen
        ? [Say.From($"On screen {Minutes(screen)}.", Fact.Of(milestone))]
        : [];

    /// <summary>"4 min", or "4 min, 3 to 6".</summary>
    public static Markdown Minutes(ThreePoint screen) => screen.Low == screen.High
        ? Markdown.Of($"{screen.Likely} min")
        : Markdown.Of($"{screen.Likely} min, between {screen.Low} and {screen.High}");
}
