using System.Text.Json;
using EpisodePlanner.Planning.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class ChangesTests
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;
    private static readonly Series Buggy = Sound.Series.Find(Id("buggy"))!;

    [Fact]
    public void Apply_AddsAndInverseRemoves()
    {
        var bob = new Person { Id = Id("bob"), Name = "Bob" };
        var applied = Apply(Sound, new PersonChange(bob.Id, bob));

        Assert.Equal(bob, applied.Workshop.People.Find(bob.Id));
        Assert.Equal(new PersonChange(bob.Id, null), applied.Inverse);
        Assert.Equal(Sound, Apply(applied.Workshop, applied.Inverse).Workshop);
    }

    [Fact]
    public void Apply_ReplacesAndInversePutsBack()
    {
        var longer = Sweep with { Note = "twice" };
        var applied = Apply(Sound, new TaskChange(longer.Id, longer));

        Assert.Equal("twice", applied.Workshop.Tasks.Find(longer.Id)!.Note);
        Assert.Equal(Sound, Apply(applied.Workshop, applied.Inverse).Workshop);
    }

    [Fact]
    public void Apply_NameZoneSettingsAccepted()
    {
        var none = new Settings();
        var applied = Apply(Sound, new Batch(
            [new NameChange("Shed"), new ZoneChange("UTC"), new SettingsChange(none), new AcceptedPlanChange(null)]));

        Assert.Equal(Sound with { Name = "Shed", Zone = "UTC", Settings = none, Accepted = null }, applied.Workshop);
        Assert.Equal(Sound, Apply(applied.Workshop, applied.Inverse).Workshop);
    }

    [Fact]
    public void Apply_BreakingARule_IsRefusedWithEveryReason() => Refuses(
        new TaskChange(Id("sweep"), Sweep with { Milestone = Id("wheels"), FilmingMinutes = -1, Stages = [] }),
        new Reason("$.tasks['sweep'].filmingMinutes", "'filmingMinutes' is -1; it must be from 0 to 6000."),
        new Reason(
            "$.tasks['sweep'].milestone",
            "There is no milestone 'wheels'; there is 'frame', 'rolling', 'rides', 'gears'."),
        new Reason("$.tasks['sweep'].stages", "A task needs at least one stage; give its hours."));

    [Fact]
    public void Apply_RemovalOfNothing() => Refuses(
        new MachineChange(Id("printer-3"), null),
        new Reason("$.machines['printer-3']", "There is no machine 'printer-3' to remove; the nearest is 'printer-1'."));

    [Fact]
    public void Apply_ThingWithAnotherId() => Refuses(
        new PersonChange(Id("ann"), Sound.People.Single()),
        new Reason("$.people['ann']", "The change is to 'ann', but its person has the id 'anna'; make them the same."));

    [Fact]
    public void Apply_RemovalOfWhatOthersName_NamesThem() => Refuses(
        new TaskChange(Id("cut-tube"), null),
        new Reason("$.tasks['weld-frame'].links[0].task", StillNamed("task 'cut-tube'", "task 'weld-frame'")),
        new Reason("$.log['log-1'].task", StillNamed("task 'cut-tube'", "log entry 'log-1'")),
        new Reason("$.log['log-2'].task", StillNamed("task 'cut-tube'", "log entry 'log-2'")));

    [Fact]
    public void Apply_RemovalOfTheDesk() => Refuses(
        new PlaceChange(Id("desk"), null),
        new Reason("$.settings.desk", StillNamed("place 'desk'", "the settings")));

    [Fact]
    public void Apply_RemovalOfAStageThatWasLoggedAndAccepted() => Refuses(
        new Batch([WithStageId("cut-tube", "a"), WithStageId("weld-frame", "a")]),
        new Reason("$.log['log-1'].stage", StillNamed("stage '1'", "log entry 'log-1'")),
        new Reason("$.log['log-2'].stage", StillNamed("stage '1'", "log entry 'log-2'")),
        new Reason("$.accepted.starts[0].stage", StillNamed("stage '1'", "the accepted plan")));

    [Fact]
    public void Apply_RemovalOfAMilestoneWithItsSeries() => Refuses(
        new SeriesChange(Buggy.Id, Buggy with { Milestones = [.. Buggy.Milestones.Take(2)] }),
        new Reason("$.episodes['ep-2'].milestones[1]", StillNamed("milestone 'rides'", "episode 'ep-2'")));

    [Fact]
    public void Apply_BatchHoldsTheRulesAtItsEndOnly()
    {
        var dust = Sweep with { Id = Id("dust"), Links = [SampleTasks.After("mop")] };
        var mop = dust with { Id = Id("mop"), Links = [] };
        var applied = Apply(Sound, new Batch([new TaskChange(dust.Id, dust), new Batch([new TaskChange(mop.Id, mop)])]));

        Assert.Equal(8, applied.Workshop.Tasks.Count);
        Assert.Equal(Sound, Apply(applied.Workshop, applied.Inverse).Workshop);
    }

    [Fact]
    public void Apply_BatchIsAllOrNone() => Refuses(
        new Batch([new NameChange("Shed"), new PersonChange(Id("bob"), null), new PlaceChange(Id("roof"), null)]),
        new Reason("$.people['bob']", "There is no person 'bob' to remove."),
        new Reason("$.places['roof']", "There is no place 'roof' to remove."));

    [Fact]
    public void Apply_EmptyBatch() =>
        Assert.Equal(new Applied(Sound, new Batch([])) { Made = new Batch([]) }, Changes.Apply(Sound, new Batch([])));

    [Fact]
    public void Apply_BatchesDeepInEachOther()
    {
        Change deep = new NameChange("Shed");
        for (var i = 0; i < 100_000; i++)
        {
            deep = new Batch([deep]);
        }

        Assert.Equal("Shed", Apply(Sound, deep).Workshop.Name);
    }

    [Fact]
    public void Change_EveryKindIsWrittenUnderANameOfItsOwn()
    {
        var each = EveryKind.Of(Sound);
        var kinds = typeof(Change).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Change)) && !type.IsAbstract)
            .ToHashSet();

        Assert.Equal(kinds, each.Select(change => change.GetType()).ToHashSet());
        Assert.Equal(each.Count, each.Select(KindWritten).Distinct().Count());
        Assert.All(kinds, kind => Assert.True(kind.IsSealed));
    }

    private static Applied Apply(Workshop workshop, Change change) =>
        Assert.IsType<Applied>(Changes.Apply(workshop, change));

    private static void Refuses(Change change, params Reason[] reasons) =>
        Assert.Equal(reasons, Assert.IsType<Refused>(Changes.Apply(Sound, change)).Reasons);

    private static string KindWritten(Change change) =>
        JsonDocument.Parse(ChangeFile.Write(change)).RootElement.GetProperty("kind").GetString()!;

    private static string StillNamed(string what, string who) =>
        $"The {what} can't go while {who} names it; change or remove that first.";

    private static TaskChange WithStageId(string task, string stage) =>
        new(Id(task), WithTask(task, t => t with { Stages = [t.Stages[0] with { Id = Id(stage) }] }).Tasks.Find(Id(task)));
}
