using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Remedies;

/// <summary>Since when a silence can be foreseen. Source: plans made of earlier moments by hand.</summary>
public sealed class HindsightTests
{
    [Fact]
    public void Of_WorkThatFailed_IsForeseenSinceThen()
    {
        // Till Sunday 3 h of work and 4 h of finishing: out on Wednesday 10 March. Then the test fails, and 60 h are left.
        var plan = Broken().Plan();

        var since = new Hindsight(plan, TestContext.Current.CancellationToken).Of(plan.Outlook("raft"))!;

        Assert.Equal(plan.Request.PlannedAt, since.Since);
        Assert.False(since.IsAtLeast);
        Assert.Equal(["build"], since.Failed);
    }

    [Fact]
    public void Of_TooMuchWorkFromTheBeginning_IsForeseenAsFarBackAsIsLooked()
    {
        var shop = Broken() with
        {
            Log = "",
            Tasks = Shop.Work("build", 400),
            Slots = """{ "id": "slots", "from": "2026-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
            Uploads = """{ "series": "raft", "date": "2026-12-01" }""",
        };
        var plan = shop.Plan();

        var since = new Hindsight(plan, TestContext.Current.CancellationToken).Of(plan.Outlook("raft"))!;

        Assert.True(since.IsAtLeast);
        Assert.Empty(since.Failed);
        Assert.Equal(plan.Request.PlannedAt - Duration.FromDays(64), since.Since);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(40)]
    [InlineData(50)]
    [InlineData(60)]
    public void Of_NothingWasDone_IsForeseenOnThatDayAndNotTheDayBefore(int hours)
    {
        // Evenings go by without work; at some day what is left no longer fits.
        var shop = Broken() with { Log = "", Tasks = Shop.Work("build", hours), Series = Raft(60) };
        var plan = shop.Plan("2027-04-20T08:00");
        if (plan.Outlook("raft").Alarms.Count == 0)
        {
            return;
        }

        var since = new Hindsight(plan, TestContext.Current.CancellationToken).Of(plan.Outlook("raft"))!;

        Assert.NotEmpty(At(plan, since.Since).Outlook("raft").Alarms);
        Assert.Empty(At(plan, since.Since - Duration.FromDays(1)).Outlook("raft").Alarms);
    }

    [Fact]
    public void Of_PromiseThatHolds_IsNothing()
    {
        var plan = GorseTests.CutAtBoth();

        Assert.Null(new Hindsight(plan, TestContext.Current.CancellationToken).Of(plan.Outlook("gorse")));
        Assert.Empty(Hindsight.Of(plan, TestContext.Current.CancellationToken));
    }

    private static Plan At(Plan plan, Instant moment) => Planner.Make(plan.Request with { PlannedAt = moment }, stop: TestContext.Current.CancellationToken);

    private static string Raft(int promise) =>
        $$"""{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": {{promise}} }, "milestones": [{ "id": "floats", "name": "it floats" }] }""";

    private static Shop Broken() => new()
    {
        Settings = Trial.Typed(4),
        People = $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }""",
        Series = Raft(14),
        Tasks = Shop.Work("build", 3),
        Slots = """{ "id": "slots", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
        Uploads = """{ "series": "raft", "date": "2027-03-01" }""",
        Log = """{ "id": "broke", "at": "2027-03-07T15:00:00Z", "task": "build", "minutes": 60, "outcome": "failed", "remainingMinutes": 3600 }""",
    };
}
