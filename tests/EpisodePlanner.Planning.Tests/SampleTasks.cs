using EpisodePlanner.Scheduling;
using NodaTime;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

/// <summary>The sample's tasks: attended work, a run and waits.</summary>
internal static class SampleTasks
{
    public static Keyed<WorkTask> All { get; } =
    [
        new WorkTask
        {
            Id = Id("cut-tube"),
            Name = "cut tube",
            Kind = WorkKind.Cut,
            Milestone = Id("frame"),
            Stages = [Attended(3)],
            Links = [After("order-steel")],
        },
        new WorkTask
        {
            Id = Id("weld-frame"),
            Name = "weld frame",
            Kind = WorkKind.Weld,
            Milestone = Id("frame"),
            Series = Id("buggy"),
            Stages = [Weld],
            Links = [AfterCutting],
            Shots = [Sparks, BareFrame],
        },
        new WorkTask
        {
            Id = Id("paint"),
            Name = "paint",
            Kind = WorkKind.Paint,
            Milestone = Id("rolling"),
            Stages = [Attended(4), Dry],
            Links = [After("weld-frame")],
        },
        new WorkTask
        {
            Id = Id("print-hubs"),
            Name = "print hubs",
            Kind = WorkKind.Print,
            Milestone = Id("rolling"),
            MayRunAlone = true,
            Stages = [Run],
        },
        new WorkTask
        {
            Id = Id("order-steel"),
            Name = "order steel",
            Kind = WorkKind.Order,
            Series = Id("buggy"),
            Stages = [Delivery],
        },
        new WorkTask { Id = Id("sweep"), Name = "sweep", Stages = [Attended(1)] },
    ];

    public static Stage Attended(decimal hours) => new() { Id = Id("1"), Kind = StageKind.Attended, Hours = hours };

    public static TaskLink After(string task) => new() { Task = Id(task) };

    private static Stage Weld =>
        Attended(12) with { LowHours = 8, HighHours = 20, Needs = [[Id("anna")], [Id("bench"), Id("yard")]] };

    private static TaskLink AfterCutting => After("cut-tube") with
    {
        LagMinutes = 60,
        LagClock = LagClock.Working,
        LagStation = Id("anna"),
        AtMostMinutes = 6_000,
    };

    private static Shot Sparks => new() { Id = Id("sparks"), Name = "sparks", OnceOnly = true };

    private static Shot BareFrame =>
        new() { Id = Id("bare"), Name = "bare frame", Moment = ShotMoment.After, LostBy = Id("paint") };

    private static Stage Dry =>
        new() { Id = Id("2"), Kind = StageKind.Wait, Hours = 24, Needs = [[Id("bench")]] };

    private static Stage Delivery => new() { Id = Id("1"), Kind = StageKind.Wait, Hours = 0, BusinessDays = 5 };

    private static Stage Run => new()
    {
        Id = Id("1"),
        Kind = StageKind.Run,
        Hours = 9.5m,
        Needs = [[Id("printer-1"), Id("printer-2")], [Id("anna")]],
        LoadMinutes = 15,
        UnloadMinutes = 10,
        LookAt = [new LocalTime(7, 30)],
    };
}
