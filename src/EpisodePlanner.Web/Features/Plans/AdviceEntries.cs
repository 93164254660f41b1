namespace EpisodePlanner.Web.Features.Plans;

/// <summary>The one next thing.</summary>
/// <param name="Stage">The stretch of work.</param>
/// <param name="Name">It in words.</param>
/// <param name="Kind">work, load or unload.</param>
/// <param name="Start">When.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Stations">Where and by whom.</param>
public sealed record NextEntry(
    KeyEntry Stage, string Name, string Kind, string Start, int Minutes, IReadOnlyList<string> Stations);

/// <summary>A run that starts before tomorrow noon.</summary>
/// <param name="Stage">The run.</param>
/// <param name="Name">It in words.</param>
/// <param name="Start">When it starts by plan.</param>
/// <param name="RunsAlone">Whether it goes on with nobody there.</param>
/// <param name="Must">Whether an upload moves when it starts a day later.</param>
/// <param name="PutOffTo">The day it was put off to.</param>
/// <param name="Moves">The uploads that would be later.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record TonightEntry(
    KeyEntry Stage,
    string Name,
    string Start,
    bool RunsAlone,
    bool Must,
    string PutOffTo,
    IReadOnlyList<MoveEntry> Moves,
    IReadOnlyList<CautionEntry> Cautions);

/// <summary>An upload that would be later.</summary>
/// <param name="Episode">Its episode.</param>
/// <param name="From">The public moment by plan.</param>
/// <param name="To">The one instead; null for none.</param>
public sealed record MoveEntry(string Episode, string From, string? To);

/// <summary>A stage that leaves its accepted start.</summary>
/// <param name="Stage">The stretch of work.</param>
/// <param name="Name">It in words.</param>
/// <param name="Accepted">The accepted start.</param>
/// <param name="Start">The start by plan, or null.</param>
/// <param name="Because">Why it does not start earlier than that, in words; null where it has no start.</param>
public sealed record MovedEntry(KeyEntry Stage, string Name, string Accepted, string? Start, string? Because);

/// <summary>Something to mind.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Text">What to mind.</param>
/// <param name="Source">Its public source.</param>
/// <param name="Defers">What comes before it.</param>
public sealed record CautionEntry(string Topic, string Text, string Source, string Defers);

/// <summary>A shot to take before it is gone.</summary>
/// <param name="Task">Its task.</param>
/// <param name="Shot">Its id.</param>
/// <param name="Name">The picture in words.</param>
/// <param name="Moment">before, during or after the task.</param>
/// <param name="OnceOnly">Whether it can't be repeated.</param>
/// <param name="Required">Whether the cut can't do without it.</param>
/// <param name="Minutes">How long it takes.</param>
/// <param name="From">From when it can be taken, or null.</param>
/// <param name="Until">The latest moment by plan, or null.</param>
/// <param name="LostBy">The task that makes it impossible, or null.</param>
/// <param name="Planned">The time that the plan keeps for it; null where it is taken during its task or takes no time.</param>
/// <param name="Passed">Whether its moment has passed.</param>
public sealed record ShotEntry(
    string Task,
    string Shot,
    string Name,
    string Moment,
    bool OnceOnly,
    bool Required,
    int Minutes,
    string? From,
    string? Until,
    string? LostBy,
    StageEntry? Planned,
    bool Passed);
