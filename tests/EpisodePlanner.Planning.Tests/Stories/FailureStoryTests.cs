using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>
/// A mast that breaks in its test. Acceptance answers: the project's scenario 4, on Monday 8 March 2027: the redo takes 35 h
/// at 18 h a week, an episode of the failure a pick-up of 2 h and an edit of 12 h, and its slot comes in nine days.
/// </summary>
public sealed class FailureStoryTests
{
    private const string Got = "got";

    [Fact]
    public void Others_FailureWithItsShots_FitsBeforeTheSlot()
    {
        var plan = Sedge(Got).Plan();

        var failure = plan.Others("sedge")[0];

        Assert.Equal(StoryMove.TellFailure, failure.Move);
        Assert.Equal(14m, failure.Difference.HoursMore);
        Assert.Equal(new LocalDate(2027, 3, 17), failure.Then.Days("sedge").First());
        Assert.True(plan.Days("sedge").First() > new LocalDate(2027, 3, 17));
        var told = Assert.Single(failure.Then.Request.Workshop.Episodes);
        Assert.Equal((new Id("broke"), 0), (told.Tells, told.Milestones.Count));
    }

    [Theory]
    [InlineData("missing")]
    [InlineData("lost")]
    public void Others_FailureWithoutItsShots_IsNotOffered(string state) =>
        Assert.DoesNotContain(Sedge(state).Plan().Others("sedge"), proposal => proposal.Move == StoryMove.TellFailure);

    [Fact]
    public void Others_FailureThatIsToldAlready_IsNotOfferedAgain()
    {
        var told = Sedge(Got) with { Episodes = """{ "id": "fall", "title": "It fell", "series": "sedge", "tells": "broke" }""" };

        Assert.DoesNotContain(told.Plan().Others("sedge"), proposal => proposal.Move == StoryMove.TellFailure);
    }

    [Fact]
    public void Others_RestingSeries_AreNone()
    {
        var resting = Sedge(Got) with
        {
            Series = """{ "id": "sedge", "name": "Sedge", "state": "resting", "restingUntil": "2027-06-01", "milestones": [{ "id": "stands", "name": "the mast stands" }] }""",
        };

        Assert.Empty(resting.Plan().Others("sedge"));
    }

    internal static Shop Sedge(string shot) => new()
    {
        Settings = """{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "pickUps", "hours": 2 }, { "kind": "editPass", "hours": 12 }] }""",
        People = """
            { "id": "ann", "name": "Ann", "hours": { "weekly": [
              { "days": ["monday", "tuesday", "wednesday", "thursday"], "from": "18:00", "to": "21:00" }, { "days": ["saturday"], "from": "10:00", "to": "16:00" }] } }
            """,
        Series = """{ "id": "sedge", "name": "Sedge", "milestones": [{ "id": "stands", "name": "the mast stands" }] }""",
        Tasks = $$"""
            { "id": "mast", "name": "test the mast", "milestone": "stands", "stages": [{ "kind": "attended", "hours": 35 }],
              "shots": [{ "id": "break", "name": "the break", "moment": "during", "required": true, "state": "{{shot}}" }] }
            """,
        Slots = """{ "id": "slots", "from": "2027-03-17", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=WE" }""",
        Uploads = """{ "series": "sedge", "date": "2027-02-24" }""",
        Log = """{ "id": "broke", "at": "2027-03-07T15:00:00Z", "task": "mast", "minutes": 60, "outcome": "failed", "remainingMinutes": 2100 }""",
    };
}
