using EpisodePlanner.Planning.Tests.Plans;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>What no cut and no slot can do, said with the nearest that could. What is expected is our own contract.</summary>
public sealed class StoryNotesTests
{
    private const string Two = """[{ "id": "floats", "name": "it floats" }, { "id": "steers", "name": "it steers" }]""";

    private static readonly Shop Plain = new()
    {
        Series = $$"""{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 30 }, "milestones": {{Two}} }""",
        Tasks = $"{Shop.Work("build", 8)}, {Shop.Work("rudder", 8).Replace("floats", "steers", StringComparison.Ordinal)}",
    };

    [Fact]
    public void Notes_PlainWorkshop_AreNone() => Assert.Empty(Notes(Plain));

    [Fact]
    public void Notes_BoundsNoCutMeets_SayHowNearTheNearestComes()
    {
        // Two milestones of 4 min each: one episode of 8 min, or two of 4, and at least 10 are wanted.
        var note = Assert.Single(Notes(Plain with
        {
            Series = $$"""{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 30 }, "screenMinutes": { "least": 10, "most": 20 }, "milestones": {{Two}} }""",
        }));

        Assert.Equal("$.series['raft'].screenMinutes", note.Where);
        Assert.StartsWith("Raft: no way to cut it keeps every episode between 10 and 20 minutes on screen: the nearest is out by 2 min altogether.", note.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_PromiseShorterThanSlots_NameTheShortestThatCouldHold()
    {
        var note = Assert.Single(Notes(Plain with
        {
            Series = $$"""{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 5 }, "milestones": {{Two}} }""",
        }));

        Assert.Equal("$.series['raft'].promise", note.Where);
        Assert.Contains("7 days apart: a promise of 7 days, or a slot between them, could hold.", note.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_TwoPinnedToOneSlot_NameTheNextFree()
    {
        var note = Assert.Single(Notes(Plain with { Episodes = Pinned("2027-03-26T18:00", "2027-03-26T18:00") }));

        Assert.Equal(
            "“first” and “second” are pinned to one slot, Fri 26 Mar 18:00; one slot carries one episode: the next that nothing is pinned to is Fri 2 Apr 18:00.",
            note.Says);
    }

    [Fact]
    public void Notes_PinnedOutOfStoryOrder_NameASlotAfterIt()
    {
        var note = Assert.Single(Notes(Plain with { Episodes = Pinned("2027-04-02T18:00", "2027-03-26T18:00") }));

        Assert.Equal("$.episodes['b'].pinnedSlot", note.Where);
        Assert.Equal("“second” is pinned to Fri 26 Mar 18:00, before “first”, which the story tells first: Fri 9 Apr 18:00 would be after it.", note.Says);
    }

    [Fact]
    public void Notes_RuleWithoutOccurrence_SayUntilWhenTheyLooked()
    {
        var note = Assert.Single(Notes(Plain with
        {
            Slots = $$"""{{Plain.Slots}}, { "id": "later", "from": "2040-01-06", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }""",
        }));

        Assert.Equal("$.slotRules['later']", note.Where);
        Assert.Contains("gives no slot up to ", note.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_TogetherWithNextOrWithoutPayoff_SayWhyNothingIsProposed()
    {
        var plan = (Plain with
        {
            Series = """
                { "id": "raft", "name": "Raft", "milestones": [
                  { "id": "floats", "name": "it floats", "togetherWithNext": true }, { "id": "steers", "name": "it steers", "payoff": false },
                  { "id": "sails", "name": "it sails" }] }
                """,
        }).Plan();

        var places = plan.Places("raft");
        Assert.Equal(["shown together with the next", "it does not satisfy by itself", "the last that is planned"], places.Select(place => place.Stays));
        Assert.All(places, place => Assert.Null(place.Proposal));
    }

    [Theory]
    [InlineData("\"cutPinned\": true", "its cut is pinned")]
    [InlineData("\"pinnedSlot\": \"2027-03-26T18:00\"", "it is pinned to a slot")]
    public void Places_Settled_SayWhy(string pin, string why)
    {
        var plan = (Plain with { Episodes = $$"""{ "id": "a", "title": "first", "series": "raft", "milestones": ["floats"], {{pin}} }""" }).Plan();

        Assert.Equal(why, plan.Places("raft")[0].Stays);
    }

    [Fact]
    public void Pin_OfWhatNobodyHasCut_CutsItAsItIs()
    {
        var plan = Plain.Plan();

        var pinned = plan.Cold(CutPins.Of(plan.Request.Workshop, plan.Episodes[0], true)!).Request.Workshop;

        var episode = Assert.Single(pinned.Episodes);
        Assert.True(episode.CutPinned);
        Assert.Equal(plan.Episodes[0].Milestones, episode.Milestones);
        Assert.Null(CutPins.Of(plan.Request.Workshop, plan.Episodes[0], false));
    }

    private static ValueList<Finding> Notes(Shop shop) => shop.Plan().Answer().Notes;

    private static string Pinned(string first, string second) => $$"""
        { "id": "a", "title": "first", "series": "raft", "milestones": ["floats"], "pinnedSlot": "{{first}}" },
        { "id": "b", "title": "second", "series": "raft", "milestones": ["steers"], "pinnedSlot": "{{second}}" }
        """;
}
