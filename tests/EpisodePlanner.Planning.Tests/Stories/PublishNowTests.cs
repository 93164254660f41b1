using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>"Could I publish now?" Expected days: counted by hand in evenings of four hours.</summary>
public sealed class PublishNowTests
{
    private static readonly Id Raft = new("raft");

    [Fact]
    public void Of_OneMilestoneDone_IsAnEpisodeOfIt()
    {
        // 8 h of finishing: Monday and Tuesday evening; the slot of Wednesday 18:00. The plan, uncut, shows both much later.
        var plan = HalfDone().Plan();

        var about = PublishNow.Of(plan, Raft, TestContext.Current.CancellationToken)!;

        Assert.Equal(["it floats"], about.Done.Select(milestone => milestone.Name));
        Assert.Equal(8 * 60, about.Episode.WorkMinutes);
        Assert.Equal(new LocalDate(2027, 3, 10), about.Episode.Date);
        Assert.Equal((4m, 9m), about.ScreenMinutes);
        Assert.Equal(["the splash"], about.Lacking.Select(shot => shot.Name));
        Assert.Equal(8m, about.Difference.HoursMore);
        Assert.True(plan.Days("raft").First() > about.Episode.Date);
        Assert.Equal(about.Then.Days("raft"), plan.Cold(about.Change!).Days("raft"));
    }

    [Fact]
    public void Of_ThePlanHasItSo_ChangesNothing()
    {
        var shop = HalfDone() with { Episodes = """{ "id": "one", "title": "It floats", "series": "raft", "milestones": ["floats"] }""" };
        var plan = shop.Plan();

        var about = PublishNow.Of(plan, Raft, TestContext.Current.CancellationToken)!;

        Assert.Null(about.Change);
        Assert.Same(plan, about.Then);
        Assert.Equal(new Id("one"), about.Episode.Id);
    }

    [Fact]
    public void Of_NothingDone_IsFootageAlone()
    {
        var plan = (HalfDone() with { Log = "" }).Plan();

        var about = PublishNow.Of(plan, Raft, TestContext.Current.CancellationToken)!;

        Assert.Empty(about.Done);
        Assert.Empty(about.Episode.Milestones);
        Assert.Null(about.ScreenMinutes);
        Assert.Equal(new LocalDate(2027, 3, 10), about.Episode.Date);
    }

    [Fact]
    public void Of_DoneWithoutAPayoff_WaitsForTheNext()
    {
        var plan = HalfDone(payoff: false).Plan();

        Assert.Empty(PublishNow.Of(plan, Raft, TestContext.Current.CancellationToken)!.Done);
    }

    [Fact]
    public void Of_RestingOrUnknownSeries_IsNothing()
    {
        var plan = HalfDone(state: "\"state\": \"resting\", \"restingUntil\": \"2027-06-01\", ").Plan();

        Assert.Null(PublishNow.Of(plan, Raft, TestContext.Current.CancellationToken));
        Assert.Null(PublishNow.Of(plan, new Id("none"), TestContext.Current.CancellationToken));
    }

    private static Shop HalfDone(bool payoff = true, string state = "") => new()
    {
        Settings = Trial.Typed(8),
        People = $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }""",
        Series = $$"""
            { "id": "raft", "name": "Raft", {{state}}"milestones": [
              { "id": "floats", "name": "it floats", "payoff": {{(payoff ? "true" : "false")}}, "screenMinutes": { "low": 4, "likely": 6, "high": 9 } },
              { "id": "sails", "name": "it sails" }] }
            """,
        Tasks = """
            { "id": "hull", "name": "hull", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 4 }],
              "shots": [{ "id": "wet", "name": "the splash", "moment": "during", "required": true, "state": "missing" }, { "id": "dry", "name": "the hull", "moment": "during", "state": "got" }] },
            { "id": "mast", "name": "mast", "milestone": "sails", "stages": [{ "kind": "attended", "hours": 40 }] }
            """,
        Slots = """{ "id": "slots", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
        Uploads = """{ "series": "raft", "date": "2027-03-01" }""",
        Log = """{ "id": "built", "at": "2027-03-07T20:00:00Z", "task": "hull", "minutes": 240, "outcome": "done" }""",
    };
}
