namespace EpisodePlanner.Web.Features.Cadences;

/// <summary>What can be kept up over all active series. Hours are decimal, rounded to hundredths; days ISO dates.</summary>
public sealed record CadenceDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>Hands-on hours a week that are kept.</summary>
    public required decimal KeptHoursAWeek { get; init; }

    /// <summary>Hours a week that hands are free.</summary>
    public required decimal OpenHoursAWeek { get; init; }

    /// <summary>Weeks of log that this rests on; 0 where free hours were taken.</summary>
    public required int LogWeeks { get; init; }

    /// <summary>The share of kept hours that may be loaded.</summary>
    public required decimal Loading { get; init; }

    /// <summary>Uploads a week that this carries, or null.</summary>
    public required decimal? UploadsAWeek { get; init; }

    /// <summary>Slots in the coming year.</summary>
    public required int SlotsAYear { get; init; }

    /// <summary>All promises together.</summary>
    public required TogetherEntry Together { get; init; }

    /// <summary>The series whose promise is broken first, or null.</summary>
    public required string? BreaksFirst { get; init; }

    /// <summary>The last day within that promise, or null.</summary>
    public required string? BreaksAfter { get; init; }

    /// <summary>Promises that would hold together; empty where these hold or none were found.</summary>
    public required IReadOnlyList<NearerEntry> Nearest { get; init; }

    /// <summary>The active series, by name.</summary>
    public required IReadOnlyList<CostEntry> Series { get; init; }

    /// <summary>What resting one of them would do.</summary>
    public required IReadOnlyList<RestingEntry> Resting { get; init; }
}

/// <summary>Whether promises hold together.</summary>
/// <param name="Hold">Whether slots and hands suffice.</param>
/// <param name="SlotsSuffice">Whether a rotation keeps every promise.</param>
/// <param name="Impossible">Whether it is certain that none does.</param>
/// <param name="HandsSuffice">Whether hands are enough.</param>
/// <param name="HoursAWeek">Hours a week that the promises ask for.</param>
/// <param name="Rotation">Whose turn each slot is, over and over.</param>
public sealed record TogetherEntry(
    bool Hold, bool SlotsSuffice, bool Impossible, bool HandsSuffice, decimal HoursAWeek, IReadOnlyList<string> Rotation);

/// <summary>A promise that would hold.</summary>
/// <param name="Series">The series.</param>
/// <param name="Days">Its longest silence then.</param>
/// <param name="More">How many days more than now.</param>
public sealed record NearerEntry(string Series, int Days, int More);

/// <summary>What a promise asks for.</summary>
/// <param name="Series">The series.</param>
/// <param name="Days">The longest silence.</param>
/// <param name="Slots">One of any so many slots in a row.</param>
/// <param name="BenchHours">Bench hours an episode costs.</param>
/// <param name="TailHours">Hours of its tail.</param>
/// <param name="Episodes">From how many episodes to come; 0 where other series' were taken.</param>
/// <param name="HoursAWeek">Hours a week that keep the promise.</param>
public sealed record CostEntry(
    string Series, int Days, int Slots, decimal BenchHours, decimal TailHours, int Episodes, decimal HoursAWeek);

/// <summary>What resting a series would do.</summary>
/// <param name="Rests">The series.</param>
/// <param name="Then">The other promises together.</param>
public sealed record RestingEntry(string Rests, TogetherEntry Then);
