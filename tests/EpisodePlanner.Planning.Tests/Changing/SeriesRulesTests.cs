using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class SeriesRulesTests
{
    [Fact]
    public void Check_RestingWithoutDate() => Breaks.One(
        WithSeries("clock", s => s with { RestingUntil = null }),
        "$.series['clock'].restingUntil",
        "A resting series says when it comes back; give restingUntil.");

    [Theory]
    [InlineData(null, null)]
    [InlineData(28, 2)]
    public void Check_PromiseNotOneOfTwo(int? days, int? uploads) => Breaks.One(
        WithSeries("buggy", s => s with { Promise = new Promise { LongestSilenceDays = days, UploadsPerMonth = uploads } }),
        "$.series['buggy'].promise",
        "A promise is one of two: give either longestSilenceDays or uploadsPerMonth.");

    [Fact]
    public void Check_ScreenBoundsReversed() => Breaks.One(
        WithSeries("buggy", s => s with { ScreenMinutes = new ScreenBounds { Least = 20, Most = 10 } }),
        "$.series['buggy'].screenMinutes",
        "The shortest episode is longer than the longest; make 'least' at most 'most'.");

    [Fact]
    public void Check_MilestoneIdTakenInAnotherSeries() => Breaks.One(
        WithSeries("clock", s => s with { Milestones = [new Milestone { Id = Id("frame"), Name = "Frame" }] }),
        "$.series['clock'].milestones[0].id",
        "The id 'frame' is taken by a milestone of series 'buggy'; give this one another.");

    [Fact]
    public void Check_MilestoneIdTakenInTheSameSeries() => Breaks.At(
        WithSeries("clock", s => s with { Milestones = [s.Milestones[0], s.Milestones[0]] }),
        "$.series['clock'].milestones[1].id");

    [Fact]
    public void Check_ScreenMinutesOutOfOrder() => Breaks.At(
        WithSeries("clock", s => s with
        {
            Milestones = [s.Milestones[0] with { ScreenMinutes = new ThreePoint { Low = 5, Likely = 4, High = 3 } }],
        }),
        "$.series['clock'].milestones[0].screenMinutes.low",
        "$.series['clock'].milestones[0].screenMinutes.high");

    [Fact]
    public void Check_EpisodeOfUnknownSeries() => Breaks.One(
        WithEpisode("ep-1", e => e with { Series = Id("bugy"), Milestones = [] }) with { Uploads = [] },
        "$.episodes['ep-1'].series",
        "There is no series 'bugy'; the nearest is 'buggy'.");

    [Fact]
    public void Check_EpisodeShowsUnknownMilestone() => Breaks.One(
        WithEpisode("ep-1", e => e with { Milestones = [Id("frame"), Id("flies")] }),
        "$.episodes['ep-1'].milestones[1]",
        "There is no milestone 'flies'; there is 'frame', 'rolling', 'rides', 'gears'.");

    [Fact]
    public void Check_EpisodeShowsMilestoneOfAnotherSeries() => Breaks.One(
        WithEpisode("ep-1", e => e with { Milestones = [Id("gears")] }),
        "$.episodes['ep-1'].milestones[0]",
        "The milestone 'gears' is of series 'clock'; an episode of 'buggy' can't show it.");

    [Fact]
    public void Check_MilestoneInTwoEpisodes() => Breaks.One(
        WithEpisode("ep-2", e => e with { Milestones = [Id("frame"), Id("rolling")] }),
        "$.episodes['ep-2'].milestones[0]",
        "The milestone 'frame' is already shown by episode 'ep-1'; leave it in one of them.");

    [Fact]
    public void Check_EpisodeAgainstTheStory() => Breaks.One(
        WithEpisode("ep-2", e => e with { Milestones = [Id("rides"), Id("rolling")] }),
        "$.episodes['ep-2'].milestones[1]",
        "The milestone 'rolling' comes before 'rides' in the story; put it before that here too.");

    [Fact]
    public void Check_TailOfEpisodeOutOfOrder() => Breaks.At(
        WithEpisode("ep-2", e => e with { Tail = [new TailPart { Kind = TailKind.Captions, Hours = 3, HighHours = 2 }] }),
        "$.episodes['ep-2'].tail[0].highHours");

    [Fact]
    public void Check_UploadOfUnknownSeriesAndEpisode() => Breaks.At(
        WithUpload("up-1", u => u with { Series = Id("x"), Episode = Id("y") }),
        "$.uploads['up-1'].series",
        "$.uploads['up-1'].episode");

    [Fact]
    public void Check_UploadOfAnotherSeriesThanItsEpisode() => Breaks.One(
        WithUpload("up-1", u => u with { Series = Id("clock") }),
        "$.uploads['up-1'].series",
        "The episode 'ep-1' tells series 'buggy'; its upload must be of that series.");
}
