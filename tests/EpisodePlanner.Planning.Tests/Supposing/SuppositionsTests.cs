using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Supposing;

/// <summary>Suppositions beside a plan. Expected days: counted by hand in evenings of four hours.</summary>
public sealed class SuppositionsTests
{
    private static readonly Id Maker = new("maker");
    private static readonly Id Gorse = new("gorse");

    [Fact]
    public void Away_AWeek_PutsEverythingOffByFiveEvenings()
    {
        var plan = GorseTests.Uncut();
        var away = Suppositions.Away(plan.Request.Workshop, Maker, new LocalDate(2027, 3, 8), 7)!;

        var difference = Beside(plan, away);

        Assert.Equal("Maker is away from Monday 8 March to Sunday 14 March", away.Says);
        var moved = Assert.Single(difference.Moved);
        Assert.Equal((new LocalDate(2027, 4, 7), new LocalDate(2027, 4, 14)), (moved.From!.Value, moved.To!.Value));
        Assert.Equal((11, 18), difference.Outlooks.Single(change => change.Before.Series == Gorse).WorstOver);
        Assert.Equal(0m, difference.HoursMore);
        Assert.False(difference.IsSame);
    }

    [Fact]
    public void Away_SomebodyUnknown_IsNothing() =>
        Assert.Null(Suppositions.Away(GorseTests.Uncut().Request.Workshop, new Id("nobody"), new LocalDate(2027, 3, 8), 7));

    [Fact]
    public void Fails_APlannedRun_IsDoneOnceMore()
    {
        // 10 h from Monday 18:00 end in the night; found on Tuesday at 18:00, begun again, off the bed on Wednesday at 18:00.
        var plan = Printing().Plan();
        var run = plan.Stages.Single(stage => stage.Key.IsTask);

        var difference = Beside(plan, Suppositions.Fails(plan, run.Key)!);

        Assert.Equal(2, difference.Then.Stages.Count(stage => stage.Key.IsTask));
        var moved = Assert.Single(difference.Moved);
        Assert.Equal((new LocalDate(2027, 3, 10), new LocalDate(2027, 3, 11)), (moved.From!.Value, moved.To!.Value));
    }

    [Fact]
    public void Fails_ARunThatGoesOn_IsLoggedAsFailedNow()
    {
        var plan = (Printing() with { Log = """{ "id": "on", "at": "2027-03-08T07:00:00Z", "task": "print", "stage": "1", "outcome": "begun" }""" }).Plan();
        var run = plan.Stages.Single(stage => stage.Key.IsTask);
        Assert.True(run.Begun);

        var difference = Beside(plan, Suppositions.Fails(plan, run.Key)!);

        Assert.Equal(LogOutcome.Failed, difference.Then.Request.Workshop.Log.Single(entry => entry.Id != new Id("on")).Outcome);
        Assert.False(difference.Then.Stages.Single(stage => stage.Key.IsTask).Begun);
    }

    [Fact]
    public void Late_ADelivery_TakesSoManyDaysLonger()
    {
        var shop = Printing() with { Tasks = """{ "id": "motor", "name": "motor", "milestone": "floats", "stages": [{ "kind": "wait", "hours": 48 }] }""" };
        var plan = shop.Plan();

        var difference = Beside(plan, Suppositions.Late(plan.Request.Workshop, new Id("motor"), new Id("1"), 10)!);

        Assert.Equal(10, Assert.Single(difference.Moved).Days);
        Assert.Null(Suppositions.Late(plan.Request.Workshop, new Id("motor"), new Id("2"), 10));
    }

    [Fact]
    public void OneMore_Person_HalvesWhatCanBeShared()
    {
        var plan = GorseTests.Uncut();

        Assert.Equal(
            "there is a second pair of hands, free when Maker is", Suppositions.OneMore(plan.Request.Workshop, Maker)!.Says);
        Assert.Null(Suppositions.OneMore(plan.Request.Workshop, new Id("nobody")));
    }

    [Fact]
    public void Pause_Finish_FreesAllThatIsLeft()
    {
        var plan = GorseTests.Uncut();

        var end = SeriesPause.Of(plan, Gorse, null, TestContext.Current.CancellationToken)!;

        Assert.Equal(86 * 60, end.FreedMinutes);
        Assert.Equal(["wheels on", "brakes", "rides"], end.Untold.Select(milestone => milestone.Name));
        Assert.Equal("gorse.rest", $"{Assert.Single(end.Difference.Gone).Id}");
        Assert.Null(SeriesPause.Of(end.Difference.Then, Gorse, null, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Pause_RestUntilTheFifthOfApril_FreesTwentyEvenings()
    {
        var plan = GorseTests.Uncut();

        var rest = SeriesPause.Of(plan, Gorse, new LocalDate(2027, 4, 5), TestContext.Current.CancellationToken)!;

        Assert.Equal(80 * 60, rest.FreedMinutes);
        Assert.Empty(rest.Untold);
        Assert.Equal(SeriesState.Resting, rest.Difference.Then.Outlook("gorse").State);
    }

    [Fact]
    public void Difference_WorkThatCanNeverBeDoneThen_IsNamed()
    {
        // Without leave to run alone, 10 h of printing don't fit into evenings of four.
        var plan = Printing().Plan();
        var printer = plan.Request.Workshop.Machines.Single();

        var difference = Beside(plan, new Supposition("it is watched", new MachineChange(printer.Id, printer with { MayRunAlone = false })));

        Assert.Contains(difference.NewlyImpossible, finding => finding.Says.Contains("print", StringComparison.Ordinal));
        Assert.Null(Assert.Single(difference.Moved).To);
    }

    [Fact]
    public void Difference_OfAPlanAndItself_IsNone()
    {
        var plan = GorseTests.CutAtBoth();

        Assert.True(new PlanDifference(plan, plan).IsSame);
        Assert.True(Beside(plan, new Supposition("nothing", new Batch([]))).IsSame);
    }

    [Fact]
    public void Difference_TheOtherWayRound_IsTheOpposite()
    {
        var (uncut, cut) = (GorseTests.Uncut(), GorseTests.CutAtBoth());
        var (there, back) = (new PlanDifference(uncut, cut), new PlanDifference(cut, uncut));

        Assert.Equal(there.HoursMore, -back.HoursMore);
        Assert.Equal(there.Added, back.Gone);
        Assert.Equal(there.Gone, back.Added);
        Assert.Equal(there.Moved.Select(move => (move.Episode, move.To, move.From)), back.Moved.Select(move => (move.Episode, move.From, move.To)));
        Assert.Equal(there.Starts.Count, back.Starts.Count);
    }

    private static PlanDifference Beside(Plan plan, Supposition supposition)
    {
        var applied = Assert.IsType<Applied>(Changes.Apply(plan.Request.Workshop, supposition.Change));
        return new PlanDifference(plan, Trial.Feasible(plan.Request with { Workshop = applied.Workshop }));
    }

    private static Shop Printing() => new()
    {
        Settings = Trial.Typed(2),
        People = """{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"], "from": "18:00", "to": "22:00" }] } }""",
        Machines = """{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": true }""",
        Series = """{ "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] }""",
        Tasks = """{ "id": "print", "name": "print", "milestone": "floats", "mayRunAlone": true, "stages": [{ "kind": "run", "hours": 10, "needs": [["printer"]] }] }""",
        Slots = """{ "id": "slots", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
        Uploads = """{ "series": "raft", "date": "2027-03-01" }""",
    };
}
