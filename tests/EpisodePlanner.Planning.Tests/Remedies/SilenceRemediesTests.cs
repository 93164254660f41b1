using EpisodePlanner.Planning.Tests.Demo;
using EpisodePlanner.Planning.Tests.Plans;
using EpisodePlanner.Planning.Tests.Stories;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Remedies;

/// <summary>What can be done about silences. Acceptance answers: the project's scenarios 2, 8, 9 and 10; gains by cold plans.</summary>
public sealed class SilenceRemediesTests
{
    [Fact]
    public void Of_Gorse_CutsEarlier()
    {
        var about = Of(GorseTests.Uncut(), "gorse")!;

        Assert.Equal((new LocalDate(2027, 3, 27), 11), (about.Alarm.Due, about.Alarm.DaysOver));
        var cut = Assert.Single(about.Helping, remedy => remedy.Says == "an episode ends with “wheels on”");
        Assert.Equal((RemedyKind.Cut, 7, 4, 16m), (cut.Kind, cut.DaysWon, cut.OverThen, cut.Difference.HoursMore));
        Assert.Contains(about.Helping, remedy => remedy.OverThen == 0);
    }

    [Fact]
    public void Of_Kite_OffersTheCutAndTheFootage()
    {
        var about = Of(Trial.Plan(FirstAnswerTests.File(), FirstAnswerTests.Now), "kite")!;

        // 39 days with the cut, 25 + a longer finale with footage.
        Assert.Contains(about.Helping, remedy => remedy is { Kind: RemedyKind.Cut, OverThen: 18 });
        Assert.Contains(about.Helping, remedy => remedy.Kind == RemedyKind.OtherEpisode);
    }

    [Fact]
    public void Of_EveryHelpingRemedy_IsTheColdPlanOfItsChange()
    {
        foreach (var (plan, series) in new[] { (GorseTests.Uncut(), "gorse"), (Trial.Plan(FirstAnswerTests.File(), FirstAnswerTests.Now), "kite") })
        {
            var about = Of(plan, series)!;
            foreach (var remedy in about.Helping.Append(about.Rest!))
            {
                var applied = Assert.IsType<Applied>(Changes.Apply(plan.Request.Workshop, remedy.Change));
                var cold = Trial.Feasible(plan.Request with { Workshop = applied.Workshop });
                Assert.Equal(remedy.OverThen, cold.Outlook(series).Alarms.Select(alarm => alarm.DaysOver).DefaultIfEmpty(0).Max());
                Assert.Equal(plan.Request.Workshop, Assert.IsType<Applied>(Changes.Apply(applied.Workshop, applied.Inverse)).Workshop);
            }
        }
    }

    [Fact]
    public void Of_EveryoneIsAway_NothingHelps()
    {
        // Nobody is there until 5 April, and 4 h of finishing are left; the last day within the promise is 26 March.
        var about = Of(Away().Plan(), "raft")!;

        Assert.Empty(about.Helping);
        Assert.NotEmpty(about.InVain);
        Assert.Equal(new LocalDate(2027, 4, 6), about.Alarm.Ends);
    }

    [Fact]
    public void Of_PromiseThatHolds_IsNothing() => Assert.Null(Of(GorseTests.CutAtBoth(), "gorse"));

    [Fact]
    public void Of_WorkOfAnotherSeriesInTheWay_PutsItOff()
    {
        // The buoy's promise breaks first, so its 28 h come first; put off, the raft is out a week or more earlier.
        var shop = new Shop
        {
            Settings = Trial.Typed(4),
            Series = """
                { "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 10 }, "milestones": [{ "id": "floats", "name": "it floats", "payoff": true }] },
                { "id": "buoy", "name": "Buoy", "promise": { "longestSilenceDays": 60 }, "milestones": [{ "id": "rings", "name": "it rings" }] }
                """,
            Tasks = Shop.Work("build", 12) + """, { "id": "bell", "name": "bell", "milestone": "rings", "neededBy": "2027-03-17", "stages": [{ "kind": "attended", "hours": 24 }] }""",
            Uploads = """{ "series": "raft", "date": "2027-03-05" }, { "series": "buoy", "date": "2027-03-01" }""",
        };
        var about = Of(shop.Plan(), "raft")!;

        // Work that is needed by a date outside is never put off.
        Assert.DoesNotContain(about.Helping, remedy => remedy.Kind == RemedyKind.PutOff);
        Assert.DoesNotContain(about.InVain, says => says.Contains("Buoy", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_MachineThatMustNeverRunAlone_IsNeverLeftAlone()
    {
        // Scenario 5: the router never runs alone at night.
        var shop = new Shop
        {
            Settings = Trial.Typed(4),
            Machines = """{ "id": "router", "name": "The router", "kind": "router" }""",
            Series = """{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 7 }, "milestones": [{ "id": "floats", "name": "it floats" }] }""",
            Tasks = """{ "id": "cut", "name": "cut", "kind": "route", "milestone": "floats", "stages": [{ "kind": "run", "hours": 3, "needs": [["router"]] }] }""",
        };
        var about = Of(shop.Plan(), "raft");

        foreach (var remedy in about?.Helping ?? [])
        {
            var workshop = remedy.Then.Request.Workshop;
            Assert.All(workshop.Machines, machine => Assert.False(machine.MayRunAlone));
            Assert.All(workshop.Tasks, task => Assert.False(task.MayRunAlone));
        }
    }

    [Theory]
    [InlineData("got", true)]
    [InlineData("missing", false)]
    public void Of_Sedge_OffersTheFailureOnlyWithItsPictures(string shot, bool isOffered)
    {
        // Scenario 4: the failure is the episode; no date is named for the second test.
        var about = Of(FailureStoryTests.Sedge(shot).Plan(), "sedge")!;

        Assert.Equal(isOffered, about.Helping.Any(remedy => remedy.Kind == RemedyKind.OtherEpisode && remedy.Says.Contains("failure", StringComparison.Ordinal)));
    }

    [Fact]
    public void Of_Kite_WhoseSilenceItIs()
    {
        // Scenario 10: another series' upload does not end this one's silence, so the same days are over.
        var plan = GorseTests.Uncut();
        var others = plan.Request.Workshop with
        {
            Uploads = plan.Request.Workshop.Uploads.With(new Upload { Id = new Id("besides"), Series = new Id("other"), Date = new LocalDate(2027, 3, 7) }),
        };

        var about = Of(Trial.Feasible(plan.Request with { Workshop = others }), "gorse")!;

        Assert.Equal((new LocalDate(2027, 3, 27), 11), (about.Alarm.Due, about.Alarm.DaysOver));
    }

    [Fact]
    public void Of_AHelperForADay_IsThereOnThatDayAlone()
    {
        var plan = GorseTests.Uncut();
        var about = Of(plan, "gorse")!;

        var says = about.Helping.Select(remedy => remedy.Says).Concat(about.InVain).Where(says => says.StartsWith("somebody helps on", StringComparison.Ordinal));
        Assert.Equal("somebody helps on Monday 8 March, 18:00 to 22:00", Assert.Single(says));
    }

    [Fact]
    public void Of_TheDemo_LeavesQuietHoursAndMachinesThatMustBeWatchedAlone()
    {
        var plan = Trial.Plan(DemoSeed.Read("harbour-shed.json"), "2026-11-25T18:00");
        var real = plan.Request.Workshop;
        var about = Of(plan, "bell") ?? Of(plan, "ferry")!;

        foreach (var workshop in about.Helping.Append(about.Rest).OfType<Remedy>().Select(remedy => remedy.Then.Request.Workshop))
        {
            Assert.All(workshop.Places.Where(place => real.Places.Contains(place.Id)), place => Assert.Equal(real.Places.Find(place.Id)!.Quiet, place.Quiet));
            Assert.All(workshop.Machines.Where(machine => machine.MayRunAlone), machine => Assert.Equal(MachineKind.Printer, machine.Kind));
            Assert.All(workshop.Tasks, task => Assert.True(!task.MayRunAlone || task.Stages.All(stage => stage.Needs.All(choice => choice.All(id =>
                workshop.Machines.Find(id) is null or { Kind: MachineKind.Printer } || stage.Kind != Scheduling.StageKind.Run)))));
        }
    }

    [Fact]
    public void Of_WhatIsFoundOnTheWay_IsWhatHelps()
    {
        var plan = GorseTests.Uncut();
        var found = new FoundList();

        var about = SilenceRemedies.Of(plan, new Id("gorse"), found: found, stop: TestContext.Current.CancellationToken)!;
        var partly = SilenceRemedies.Partly(plan, new Id("gorse"), found.All)!;

        Assert.True(about.IsWhole);
        Assert.False(partly.IsWhole);
        Assert.Equal(
            about.Helping.Where(remedy => remedy.Kind != RemedyKind.Pair).Select(remedy => remedy.Says), partly.Helping.Select(remedy => remedy.Says));
    }

    private sealed class FoundList : IProgress<Remedy>
    {
        private readonly System.Collections.Concurrent.ConcurrentQueue<Remedy> all = new();

        public IEnumerable<Remedy> All => all;

        public void Report(Remedy value) => all.Enqueue(value);
    }

    private static Shop Away() => new()
    {
        Settings = Trial.Typed(4),
        People = $$"""
            { "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }],
              "dated": [{ "kind": "closed", "on": "2027-03-08", "through": "2027-04-04" }] } }
            """,
        Series = """{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 21 }, "milestones": [{ "id": "floats", "name": "it floats" }] }""",
        Tasks = Shop.Work("build", 4),
        Log = """{ "id": "built", "at": "2027-03-07T20:00:00Z", "task": "build", "minutes": 240, "outcome": "done" }""",
        Slots = """{ "id": "daily", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
    };

    private static SilenceRemedies? Of(Plan plan, string series) =>
        SilenceRemedies.Of(plan, new Id(series), stop: TestContext.Current.CancellationToken);
}
