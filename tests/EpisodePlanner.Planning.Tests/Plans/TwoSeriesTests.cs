using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Two series, six evenings of four hours. Acceptance answers: the project's scenario 5.</summary>
public sealed class TwoSeriesTests
{
    private static readonly LocalDate Slot = new(2027, 3, 14);

    [Fact]
    public void Make_TheChannelIsDueOnSunday_PrintsTonightAndBringsTheOtherForward()
    {
        var plan = Shed().Plan();

        // B, the print and 8 h, is out on Sunday; A, 28 h in 24, is not.
        Assert.Equal([Slot], plan.Days("b"));
        Assert.True(plan.Days("a").First() > Slot);
        var print = plan.Stages.Single(stage => stage.Kind == StageKind.Run);
        Assert.Equal((Instant.FromUtc(2027, 3, 8, 18, 0), true), (print.Start!.Value, print.RunsAlone));
        Assert.Equal(0, plan.Channel.WorstOver);
    }

    [Fact]
    public void Make_TheChannelIsDueOnSunday_LeavesSixteenHoursForA()
    {
        var plan = Shed().Plan();

        var minutes = plan.Stages.Where(stage => stage.Series == new Id("a")).SelectMany(stage => stage.Parts)
            .Where(part => part.Kind == PartKind.Work && part.End.InUtc().Date < Slot)
            .Sum(part => (part.End - part.Start).TotalMinutes);
        Assert.Equal(16 * 60, minutes);
    }

    [Fact]
    public void Remedies_TheRouter_IsNeverLeftAlone()
    {
        var plan = Shed().Plan();

        foreach (var outlook in SilencesAhead.Of(plan))
        {
            var about = SilenceRemedies.Of(plan, outlook.Series, stop: TestContext.Current.CancellationToken)!;
            Assert.All(about.Helping, remedy => Assert.False(remedy.Then.Request.Workshop.Machines.Find(new Id("router"))!.MayRunAlone));
        }
    }

    private static Shop Shed() => new()
    {
        Settings = """{ "rangeLow": 1, "rangeHigh": 1, "channelPromiseDays": 14, "seriesPromiseDays": 60, "tail": [{ "kind": "editPass", "hours": 8 }] }""",
        People = """{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday"], "from": "18:00", "to": "22:00" }] } }""",
        Machines = """{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": true }, { "id": "router", "name": "The router", "kind": "router" }""",
        Series = """
            { "id": "a", "name": "A", "milestones": [{ "id": "cut", "name": "the panels cut" }] },
            { "id": "b", "name": "B", "milestones": [{ "id": "printed", "name": "the bell printed" }] }
            """,
        Tasks = """
            { "id": "route", "name": "cut the panels", "milestone": "cut", "stages": [{ "kind": "attended", "hours": 18, "needs": [["router"]] }] },
            { "id": "print", "name": "print the bell", "milestone": "printed", "mayRunAlone": true, "stages": [{ "kind": "run", "hours": 22, "needs": [["printer"]] }] }
            """,
        Episodes = """
            { "id": "ea", "title": "Panels", "series": "a", "milestones": ["cut"], "tail": [{ "kind": "editPass", "hours": 10 }] },
            { "id": "eb", "title": "Bell", "series": "b", "milestones": ["printed"] }
            """,
        Slots = """{ "id": "slots", "from": "2027-01-01", "at": "12:00", "rule": "FREQ=WEEKLY;BYDAY=SU" }""",
        Uploads = """{ "series": "a", "date": "2027-02-28" }, { "series": "b", "date": "2027-02-21" }""",
    };
}
