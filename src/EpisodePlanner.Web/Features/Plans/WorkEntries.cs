namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A task with work left.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">The work in words.</param>
/// <param name="Series">Its series; null for work on the workshop itself.</param>
/// <param name="Network">
/// Its place in the network, over its stages: the earliest of the early and late starts, the latest of the finishes, the
/// least total float, the last stage's free float, critical where a stage is; null where part of it can never be done.
/// </param>
/// <param name="Bench">Its start and finish on the bench, with the cause of its start; null where part has no date.</param>
/// <param name="Stages">Its stages that are left, in working order.</param>
public sealed record TaskEntry(
    string Id, string Name, string? Series, NetworkEntry? Network, BenchEntry? Bench, IReadOnlyList<StageEntry> Stages);

/// <summary>A stage of a task, a shot with time of its own, or a part of an episode's tail.</summary>
/// <param name="Id">The stage's or shot's id; for a part of a tail its place, from 0.</param>
/// <param name="Name">Task and stage in words.</param>
/// <param name="Kind">attended, run or wait.</param>
/// <param name="Minutes">Minutes left by the planning value.</param>
/// <param name="Begun">Whether it goes on now.</param>
/// <param name="RunsAlone">Whether it goes on with nobody there.</param>
/// <param name="Network">Its place in the network; null where it can never be done.</param>
/// <param name="Bench">Its dates on the bench; null where it has none.</param>
/// <param name="Parts">When what happens.</param>
public sealed record StageEntry(
    string Id,
    string Name,
    string Kind,
    int Minutes,
    bool Begun,
    bool RunsAlone,
    NetworkEntry? Network,
    BenchEntry? Bench,
    IReadOnlyList<PartEntry> Parts);

/// <summary>Dates where nobody has to wait for a station.</summary>
/// <param name="EarlyStart">The earliest start.</param>
/// <param name="EarlyFinish">The earliest finish.</param>
/// <param name="LateStart">The latest start that leaves the end of all work where it is.</param>
/// <param name="LateFinish">The finish that belongs to it.</param>
/// <param name="TotalFloatMinutes">Late start less early start, elapsed minutes.</param>
/// <param name="FreeFloatMinutes">How far the finish may slip without moving another stage, elapsed minutes.</param>
/// <param name="Critical">Whether it decides the end of all work.</param>
public sealed record NetworkEntry(
    string EarlyStart,
    string EarlyFinish,
    string LateStart,
    string LateFinish,
    int TotalFloatMinutes,
    int FreeFloatMinutes,
    bool Critical);

/// <summary>Dates on the bench.</summary>
/// <param name="Start">The start.</param>
/// <param name="Finish">The finish.</param>
/// <param name="Cause">Why it does not start earlier.</param>
public sealed record BenchEntry(string Start, string Finish, CauseEntry Cause);

/// <summary>Why a stage does not start earlier.</summary>
/// <param name="Kind">now, begun, predecessor, greatestLag, stationHeld, closedHours, presence, minimumBlock, settingUp, date or acceptedOrder.</param>
/// <param name="Says">In words, to follow "because".</param>
/// <param name="Stage">The stage that is waited for or holds the station, or null.</param>
/// <param name="Station">The station that is held or closed, or null.</param>
/// <param name="CoBlockers">What holds it at the same time, in words.</param>
public sealed record CauseEntry(string Kind, string Says, KeyEntry? Stage, string? Station, IReadOnlyList<string> CoBlockers);

/// <summary>Which stretch of work: a stage of a task, a shot of a task, or a part of an episode's tail.</summary>
/// <param name="Task">The task, or null.</param>
/// <param name="Stage">Its stage, or null.</param>
/// <param name="Episode">The episode, or null.</param>
/// <param name="Part">The part of its tail, from 0, or null.</param>
/// <param name="Shot">The shot of the task that is filmed, or null.</param>
public sealed record KeyEntry(string? Task, string? Stage, string? Episode, int? Part, string? Shot);

/// <summary>A part of a stage.</summary>
/// <param name="Kind">work, load, run, unload or wait.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Stations">The people, machines and places it takes.</param>
public sealed record PartEntry(string Kind, string Start, string End, IReadOnlyList<string> Stations);
