using EpisodePlanner.Scheduling;
using NodaTime;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class TaskRulesTests
{
    private const string NeedsOfRun = "$.tasks['print-hubs'].stages[0].needs";

    [Fact]
    public void Check_UnknownMilestone() => Breaks.One(
        WithTask("paint", t => t with { Milestone = Id("roling") }),
        "$.tasks['paint'].milestone",
        "There is no milestone 'roling'; the nearest is 'rolling'.");

    [Fact]
    public void Check_UnknownSeries() => Breaks.One(
        WithTask("order-steel", t => t with { Series = Id("buggie") }),
        "$.tasks['order-steel'].series",
        "There is no series 'buggie'; the nearest is 'buggy'.");

    [Fact]
    public void Check_MilestoneOfAnotherSeries() => Breaks.One(
        WithTask("weld-frame", t => t with { Series = Id("clock") }),
        "$.tasks['weld-frame'].series",
        "The milestone 'frame' is of series 'buggy', not 'clock'; name the milestone alone.");

    [Fact]
    public void Check_NoStages() => Breaks.One(
        WithTask("sweep", t => t with { Stages = [] }),
        "$.tasks['sweep'].stages",
        "A task needs at least one stage; give its hours.");

    [Fact]
    public void Check_StageIdTwice() => Breaks.One(
        WithTask("sweep", t => t with { Stages = [t.Stages[0], t.Stages[0]] }),
        "$.tasks['sweep'].stages[1].id",
        "The id '1' is taken by a stage above; give this stage another.");

    [Fact]
    public void Check_ShotIdTwice() => Breaks.One(
        WithTask("weld-frame", t => t with { Shots = [t.Shots[0], t.Shots[0]] }),
        "$.tasks['weld-frame'].shots[1].id",
        "The id 'sparks' is taken by a shot above; give this shot another.");

    [Fact]
    public void Check_ShotLostByUnknownTask() => Breaks.One(
        WithTask("weld-frame", t => t with { Shots = [t.Shots[1] with { LostBy = Id("pain") }] }),
        "$.tasks['weld-frame'].shots[0].lostBy",
        "There is no task 'pain'; the nearest is 'paint'.");

    [Fact]
    public void Check_StageHoursOutOfOrder() => Breaks.One(
        WithStage("sweep", s => s with { HighHours = 0.25m }),
        "$.tasks['sweep'].stages[0].highHours",
        "'highHours' is 0.25, less than 'hours', 1; the order is low, likely, high.");

    [Fact]
    public void Check_UnknownStation() => Breaks.One(
        WithStage("sweep", s => s with { Needs = [[Id("anna")], [Id("desk"), Id("bnech")]] }),
        "$.tasks['sweep'].stages[0].needs[1][1]",
        "There is no station 'bnech'; the nearest is 'bench'.");

    [Fact]
    public void Check_EmptyChoice() => Breaks.One(
        WithStage("sweep", s => s with { Needs = [[]] }),
        "$.tasks['sweep'].stages[0].needs[0]",
        "This choice is empty; name a station or remove it.");

    [Fact]
    public void Check_TooManyCombinations()
    {
        ValueList<Id> choice = [Id("bench"), Id("desk"), Id("yard"), Id("anna")];
        Assert.Empty(WorkshopRules.Check(WithStage("sweep", s => s with { Needs = [choice, choice, choice] })));
        Breaks.One(
            WithStage("sweep", s => s with { Needs = [choice, choice, choice, choice] }),
            "$.tasks['sweep'].stages[0].needs",
            "The choices make more than 64 combinations; name fewer stations to choose from.");
    }

    [Fact]
    public void Check_RunWithoutMachine() => Breaks.One(
        WithStage("print-hubs", s => s with { Needs = [] }),
        NeedsOfRun,
        "A run needs one machine: one list of machines to choose from, and no machine elsewhere.");

    [Fact]
    public void Check_RunOnTwoMachines() => Breaks.At(
        WithStage("print-hubs", s => s with { Needs = [[Id("printer-1")], [Id("printer-2")]] }), NeedsOfRun);

    [Fact]
    public void Check_RunOnMachineOrPerson() => Breaks.At(
        WithStage("print-hubs", s => s with { Needs = [[Id("printer-1"), Id("anna")]] }), NeedsOfRun);

    [Fact]
    public void Check_RunOnUnknownMachine_TellsOnlyThat() => Breaks.At(
        WithStage("print-hubs", s => s with { Needs = [[Id("printer-3")]] }), NeedsOfRun + "[0][0]");

    [Fact]
    public void Check_WaitNeedsPerson() => Breaks.One(
        WithStage("order-steel", s => s with { Needs = [[Id("anna")]] }),
        "$.tasks['order-steel'].stages[0].needs[0][0]",
        "A wait can only fill a place, and 'anna' is a person; name a place or remove it.");

    [Fact]
    public void Check_AttendedStageLoadedUnloadedAndLookedAt() => Breaks.At(
        WithStage("sweep", s => s with { LoadMinutes = 1, UnloadMinutes = 1, LookAt = [new LocalTime(7, 0)] }),
        "$.tasks['sweep'].stages[0].loadMinutes",
        "$.tasks['sweep'].stages[0].unloadMinutes",
        "$.tasks['sweep'].stages[0].lookAt");

    [Fact]
    public void Check_BusinessDaysOfWork() => Breaks.One(
        WithStage("sweep", s => s with { BusinessDays = 2 }),
        "$.tasks['sweep'].stages[0].businessDays",
        "Only a wait counts business days; make this stage a wait or give hours alone.");

    [Fact]
    public void Check_LinkToUnknownTask() => Breaks.One(
        WithLink("weld-frame", l => l with { Task = Id("cut-tub") }),
        "$.tasks['weld-frame'].links[0].task",
        "There is no task 'cut-tub'; the nearest is 'cut-tube'.");

    [Fact]
    public void Check_UnknownLagStation() => Breaks.One(
        WithLink("weld-frame", l => l with { LagStation = Id("ana") }),
        "$.tasks['weld-frame'].links[0].lagStation",
        "There is no station 'ana'; the nearest is 'anna'.");

    [Fact]
    public void Check_NegativeWorkingLag() => Breaks.One(
        WithLink("weld-frame", l => l with { LagMinutes = -1 }),
        "$.tasks['weld-frame'].links[0].lagMinutes",
        "A lag in working minutes can't be negative; make it 0 or more, or count elapsed minutes.");

    [Fact]
    public void Check_LagStationOfElapsedLag() => Breaks.One(
        WithLink("weld-frame", l => l with { LagClock = LagClock.Elapsed }),
        "$.tasks['weld-frame'].links[0].lagStation",
        "Only a lag in working minutes counts at a station; remove lagStation or count working minutes.");

    [Fact]
    public void Check_AtMostLessThanLag() => Breaks.One(
        WithLink("paint", l => l with { LagMinutes = 90, AtMostMinutes = 60, Kind = LinkKind.TogetherStart }),
        "$.tasks['paint'].links[0].atMostMinutes",
        "At most 60 minutes is less than the lag of 90; make it at least the lag.");
}
