using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests;

/// <summary>Topics and sources from checks.md §9; those marked FromMemory carry its tag [M] or a detail nobody re-read.</summary>
public sealed class CautionTests
{
    private static readonly WorkKind[] DeliberatelyNone =
    [
        WorkKind.Other, WorkKind.Design, WorkKind.Assemble, WorkKind.Wire, WorkKind.Code, WorkKind.Film, WorkKind.Edit,
        WorkKind.Order, WorkKind.Approval,
    ];

    public static TheoryData<WorkKind> WorkKinds => [.. Enum.GetValues<WorkKind>()];

    public static TheoryData<MachineKind> MachineKinds => [.. Enum.GetValues<MachineKind>()];

    private static IEnumerable<Caution> All => Enum.GetValues<WorkKind>().SelectMany(Cautions.For)
        .Concat(Enum.GetValues<MachineKind>().SelectMany(Cautions.For))
        .Concat(Enum.GetValues<MachineKind>().Select(Cautions.ForRunningAlone))
        .Distinct();

    [Theory, MemberData(nameof(WorkKinds))]
    public void For_WorkThatCanHurt_HasACaution(WorkKind kind) =>
        Assert.Equal(DeliberatelyNone.Contains(kind), Cautions.For(kind).Count == 0);

    [Theory, MemberData(nameof(MachineKinds))]
    public void For_EveryMachine_HasACaution(MachineKind kind) => Assert.NotEmpty(Cautions.For(kind));

    [Fact]
    public void Caution_EachOne_NamesSourceAndDefers() => Assert.All(All, caution =>
    {
        Assert.NotEmpty(caution.Topic);
        Assert.NotEmpty(caution.Source);
        Assert.EndsWith(".", caution.Text, StringComparison.Ordinal);
        Assert.EndsWith("come first.", caution.Defers, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData(WorkKind.StoredEnergy, "29 CFR 1910.147(d)(5)")]
    [InlineData(WorkKind.Grind, "29 CFR 1910.133(a)")]
    [InlineData(WorkKind.Grind, "29 CFR 1910.215")]
    [InlineData(WorkKind.Weld, "29 CFR 1910.252")]
    [InlineData(WorkKind.Ride, "ISO 13482:2014")]
    [InlineData(WorkKind.Test, "ISO 12100:2010")]
    [InlineData(WorkKind.Test, "ISO 13850:2015")]
    [InlineData(WorkKind.CompressedAir, "29 CFR 1910.242(b)")]
    [InlineData(WorkKind.MainsWire, "NFPA 70 or the local wiring code")]
    public void For_Work_NamesTheSourceOfTheTopic(WorkKind kind, string source) =>
        Assert.Contains(Cautions.For(kind), caution => caution.Source == source);

    [Theory, MemberData(nameof(MachineKinds))]
    public void ForRunningAlone_OnlyPrinters_GetAnythingButNever(MachineKind kind)
    {
        var topic = kind == MachineKind.Printer ? "Running with nobody there" : "Never alone";
        Assert.Equal(topic, Cautions.ForRunningAlone(kind).Topic);
    }

    [Theory, MemberData(nameof(MachineKinds))]
    public void For_ATaskThatMayRunAlone_NeverSuggestsItForOtherMachines(MachineKind kind)
    {
        var (task, workshop) = Run(new Machine { Id = new("m"), Name = "m", Kind = kind, MayRunAlone = true });
        var topics = Cautions.For(task, workshop).Select(caution => caution.Topic).ToList();
        Assert.Equal(kind == MachineKind.Printer, topics.Contains("Running with nobody there"));
        Assert.Equal(kind != MachineKind.Printer, topics.Contains("Never alone"));
    }

    [Fact]
    public void For_ATaskOnAPrinterWithoutPermission_SaysNothingOfRunningAlone()
    {
        var (task, workshop) = Run(new Machine { Id = new("m"), Name = "m", Kind = MachineKind.Printer });
        Assert.Equal(["Print fumes"], Cautions.For(task, workshop).Select(caution => caution.Topic));
    }

    [Theory]
    [InlineData(MachineKind.Printer, true, "Running with nobody there")]
    [InlineData(MachineKind.Printer, false, "Print fumes")]
    [InlineData(MachineKind.Router, true, "Never alone")]
    public void For_APlannedRun_BeginsWithBeingAlone(MachineKind kind, bool alone, string first)
    {
        var (task, workshop) = Run(new Machine { Id = new("m"), Name = "m", Kind = kind, MayRunAlone = true });
        var stage = Planned(task) with { RunsAlone = alone };
        Assert.Equal(first, Cautions.For(stage, workshop)[0].Topic);
    }

    [Fact]
    public void For_APlannedTail_IsEmpty()
    {
        var (task, workshop) = Run(new Machine { Id = new("m"), Name = "m", Kind = MachineKind.Saw });
        var tail = Planned(task) with { Key = StageKey.OfTail(new("e"), 0), Work = WorkKind.Edit };
        Assert.Empty(Cautions.For(tail, workshop));
    }

    private static (WorkTask Task, Workshop Workshop) Run(Machine machine)
    {
        var stage = new Stage { Id = new("1"), Kind = StageKind.Run, Hours = 3, Needs = [[machine.Id]] };
        var task = new WorkTask { Id = new("t"), Name = "t", MayRunAlone = true, Stages = [stage] };
        var workshop = new Workshop { Format = 1, Name = "w", Zone = "Europe/Dublin", Machines = [machine], Tasks = [task] };
        return (task, workshop);
    }

    private static PlannedStage Planned(WorkTask task) => new()
    {
        Key = StageKey.OfTask(task.Id, task.Stages[0].Id),
        Index = 0,
        Name = task.Name,
        Series = default,
        Kind = StageKind.Run,
        Work = task.Kind,
        Minutes = 180,
        Begun = false,
        RunsAlone = false,
        Parts = [],
        Cause = null,
        Network = null,
    };
}
