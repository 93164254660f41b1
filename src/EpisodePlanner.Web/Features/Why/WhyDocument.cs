using System.Text.Json;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Why;

/// <summary>
/// Why an episode goes out when it does, and what would make a difference; everything was tried by planning again. Moments
/// are local ISO date-times with their offset, days ISO dates, lengths whole minutes.
/// </summary>
public sealed record WhyDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The episode.</summary>
    public required string Episode { get; init; }

    /// <summary>Its working title.</summary>
    public required string Title { get; init; }

    /// <summary>When its tail is done, or null.</summary>
    public required string? Ready { get; init; }

    /// <summary>The public moment, or null.</summary>
    public required string? Publish { get; init; }

    /// <summary>Why it is ready no earlier: from the tail back.</summary>
    public required IReadOnlyList<ChainEntry> Chain { get; init; }

    /// <summary>What was tried, the most days won first.</summary>
    public required IReadOnlyList<WhatIfEntry> WhatIfs { get; init; }

    /// <summary>Tasks that begin within two weeks, by start: whether each could begin a day later.</summary>
    public required IReadOnlyList<DayLaterEntry> DayLater { get; init; }

    /// <summary>Stations that work waits for until the episode is ready, the longest wait first.</summary>
    public required IReadOnlyList<ContestEntry> Contests { get; init; }
}

/// <summary>A difference that was tried.</summary>
/// <param name="Kind">oneMore, openDay, shorterByADay, runsAlone or publishing.</param>
/// <param name="Says">It in words.</param>
/// <param name="Change">The change, as it can be made.</param>
/// <param name="Publish">The day of the upload then, or null.</param>
/// <param name="DaysWon">Days by which it is earlier, negative for later; null where there is no day before or then.</param>
/// <param name="Ready">When the episode is ready then, or null.</param>
/// <param name="MinutesWon">Minutes by which it is ready earlier; null where it is never ready before or then.</param>
/// <param name="Others">Other uploads that move.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record WhatIfEntry(
    string Kind,
    string Says,
    JsonElement Change,
    string? Publish,
    int? DaysWon,
    string? Ready,
    int? MinutesWon,
    IReadOnlyList<DayMoveEntry> Others,
    IReadOnlyList<CautionEntry> Cautions);

/// <summary>An upload on another day.</summary>
/// <param name="Episode">Its episode.</param>
/// <param name="From">The day by plan, or null.</param>
/// <param name="To">The day instead, or null.</param>
public sealed record DayMoveEntry(string Episode, string? From, string? To);

/// <summary>A task that was put off by a day.</summary>
/// <param name="Task">The task.</param>
/// <param name="Start">When it begins by plan.</param>
/// <param name="CanWait">Whether no upload is later then.</param>
/// <param name="Later">The uploads that are.</param>
public sealed record DayLaterEntry(string Task, string Start, bool CanWait, IReadOnlyList<DayMoveEntry> Later);

/// <summary>A station that work waits for.</summary>
/// <param name="Station">The station.</param>
/// <param name="WaitedMinutes">Minutes of waiting, all stages together.</param>
/// <param name="Rivalries">Whose work goes before whose.</param>
public sealed record ContestEntry(string Station, long WaitedMinutes, IReadOnlyList<RivalryEntry> Rivalries);

/// <summary>One series' work before another's.</summary>
/// <param name="Winner">The series that has the station; null for work on the workshop itself.</param>
/// <param name="Loser">The series that waits.</param>
/// <param name="Times">How many stages wait.</param>
/// <param name="WaitedMinutes">Minutes that they wait together.</param>
/// <param name="Before">The first stage that has the station.</param>
/// <param name="First">The first stage that waits.</param>
public sealed record RivalryEntry(string? Winner, string? Loser, int Times, long WaitedMinutes, KeyEntry Before, KeyEntry First);
