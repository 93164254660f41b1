using EpisodePlanner.Planning.Tests.Plans;

namespace EpisodePlanner.Planning.Tests.Why;

/// <summary>Two prints of 30 h before an assembly, on one printer or on two. Expected moments are counted by hand.</summary>
public sealed class MoreStationsTests
{
    private static readonly Shop Prints = new()
    {
        Machines = """{ "id": "tall", "name": "Tall Printer", "kind": "printer", "mayRunAlone": true }""",
        Tasks = $"{Print("left")}, {Print("right")}, {Shop.Work("join", 2, """, "links": [{ "task": "left" }, { "task": "right" }]""")}",
        Episodes = """{ "id": "one", "title": "It floats", "series": "raft", "milestones": ["floats"] }""",
        Slots = """{ "id": "daily", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }""",
    };

    private static readonly Plan OnePrinter = Prints.Plan();

    private static readonly EpisodeWhy Why = EpisodeWhyTests.WhyOf(OnePrinter, "one");

    [Fact]
    public void WhatIf_OneMorePrinter_IsWhatAWorkshopWithTwoPrintersGives()
    {
        // One printer: Monday 18:00, 48 h free again on Wednesday 18:00 (the bed is cleared when hands come), 30 h more.
        var two = Prints with
        {
            Machines = Prints.Machines + """, { "id": "other", "name": "Other", "kind": "printer", "mayRunAlone": true }""",
            Tasks = Prints.Tasks.Replace("[\"tall\"]", "[\"tall\", \"other\"]", StringComparison.Ordinal),
        };
        var more = Assert.Single(Why.WhatIfs, tried => tried.Idea.Says == "one more “Tall Printer”");

        Assert.Equal(two.Plan().Episode("one").Date, more.Date);
        Assert.True(more.DaysWon > 0);
        Assert.Equal(more, Why.WhatIfs[0]);
    }

    [Fact]
    public void Contests_NameThePrinterAndWhoWaits()
    {
        var contest = Assert.Single(Why.Contests);

        Assert.Equal((new Id("tall"), "Tall Printer"), (contest.Station, contest.Name));
        Assert.Equal((1, new Id("raft"), new Id("raft")), (contest.Greatest.Times, contest.Greatest.Winner, contest.Greatest.Loser));
        Assert.Equal(OnePrinter.Stage("right"), contest.Greatest.First);
        Assert.Equal(OnePrinter.Stage("left"), contest.Greatest.Before);
    }

    [Fact]
    public void WhatIf_RunsAlone_OnlyForKindsThatMayWithTheCaution()
    {
        Assert.DoesNotContain(Why.WhatIfs, tried => tried.Idea.Kind == WhatIfKind.RunsAlone);

        var careful = Prints with { Machines = Prints.Machines.Replace(", \"mayRunAlone\": true", "", StringComparison.Ordinal), Tasks = Print("left", 3) };
        var alone = Assert.Single(Of(careful), tried => tried.Idea.Kind == WhatIfKind.RunsAlone);
        Assert.Equal([Cautions.ForRunningAlone(MachineKind.Printer)], alone.Idea.Cautions);

        var router = careful with { Machines = careful.Machines.Replace("\"printer\"", "\"router\"", StringComparison.Ordinal) };
        Assert.DoesNotContain(Of(router), tried => tried.Idea.Kind == WhatIfKind.RunsAlone);
    }

    [Fact]
    public void DayLater_WorkOnTheChainCannotWait_OtherWorkCan()
    {
        // The print ends on Wednesday night, the bed is cleared and the parts are joined on Wednesday evening: out on Thursday.
        var idle = Prints with { Tasks = Print("left") + ", " + Shop.Work("join", 2, """, "links": [{ "task": "left" }]""") + """, { "id": "oil", "name": "oil the vice", "stages": [{ "kind": "attended", "hours": 1 }] }""" };
        var why = EpisodeWhyTests.WhyOf(idle.Plan(), "one");

        Assert.False(Assert.Single(why.DayLater, waits => waits.Task == new Id("left")).CanWait);
        Assert.True(Assert.Single(why.DayLater, waits => waits.Task == new Id("oil")).CanWait);
    }

    private static ValueList<WhatIf> Of(Shop shop) => EpisodeWhyTests.WhyOf(shop.Plan(), "one").WhatIfs;

    private static string Print(string id, int hours = 30) => $$"""
        {
          "id": "{{id}}", "name": "{{id}}", "kind": "print", "milestone": "floats", "mayRunAlone": true,
          "stages": [{ "kind": "run", "hours": {{hours}}, "needs": [["tall"]] }]
        }
        """;
}
