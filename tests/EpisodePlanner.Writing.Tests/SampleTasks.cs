using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Writing.Tests;

/// <summary>The tasks of the sample workshop.</summary>
internal static class SampleTasks
{
    public static IEnumerable<WorkTask> All() =>
    [
        new WorkTask
        {
            Id = new("turn"),
            Name = "turn the wheels",
            Kind = WorkKind.Machine,
            Milestone = new("wheels"),
            Stages = [Stage("1", null, StageKind.Attended, 9, "lathe")],
            Shots = [Shot("chips", "chips off the first wheel", ShotMoment.During) with { State = ShotState.Got }],
            Links = [new TaskLink { Task = new("castings") }],
        },
        new WorkTask
        {
            Id = new("castings"),
            Name = "wheel castings",
            Kind = WorkKind.Order,
            Stages = [Stage("1", null, StageKind.Wait, 96)],
        },
        new WorkTask
        {
            Id = new("test"),
            Name = "brake test",
            Kind = WorkKind.Test,
            Milestone = new("brakes"),
            Stages = [Stage("1", null, StageKind.Attended, 5)],
            Shots =
            [
                Shot("old", "the old lever in one piece", ShotMoment.Before) with { OnceOnly = true, Required = true },
                Shot("smoke", "smoke off the shoes", ShotMoment.During) with { State = ShotState.Lost },
            ],
        },
        new WorkTask
        {
            Id = new("shoes"),
            Name = "brake shoes",
            Kind = WorkKind.Print,
            Milestone = new("brakes"),
            MayRunAlone = true,
            Stages = [Stage("1", "print", StageKind.Run, 14, "printer"), Stage("2", "fit", StageKind.Attended, 2)],
            Shots = [Shot("bed", "shoes coming off the bed", ShotMoment.During) with { Minutes = 10 }],
        },
        new WorkTask
        {
            Id = new("gearbox"),
            Name = "fill the gearbox",
            Kind = WorkKind.Assemble,
            Milestone = new("brakes"),
            Stages = [Stage("1", null, StageKind.Attended, 3)],
            Shots = [Shot("inside", "inside the gearbox", ShotMoment.After) with { OnceOnly = true, Required = true, Minutes = 30, LostBy = new("weld") }],
        },
        new WorkTask
        {
            Id = new("weld"),
            Name = "closing weld",
            Kind = WorkKind.Weld,
            Milestone = new("brakes"),
            Stages = [Stage("1", null, StageKind.Attended, 2)],
            Links = [new TaskLink { Task = new("gearbox") }],
        },
        new WorkTask { Id = new("shelf"), Name = "hang a shelf", Stages = [Stage("1", null, StageKind.Attended, 1)] },
    ];

    private static Stage Stage(string id, string? name, StageKind kind, decimal hours, string? machine = null) => new()
    {
        Id = new(id),
        Name = name,
        Kind = kind,
        Hours = hours,
        Needs = machine is null ? [] : [[new Id(machine)]],
    };

    private static Shot Shot(string id, string name, ShotMoment moment) => new() { Id = new(id), Name = name, Moment = moment };
}
