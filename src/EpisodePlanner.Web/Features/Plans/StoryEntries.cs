namespace EpisodePlanner.Web.Features.Plans;

/// <summary>An episode to come.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Its working title.</param>
/// <param name="Series">Its series.</param>
/// <param name="Assumed">Nobody has cut it.</param>
/// <param name="Milestones">The milestones it shows, in story order.</param>
/// <param name="Ready">When its tail is done, or null.</param>
/// <param name="Slot">The slot it goes out in, or null.</param>
/// <param name="Publish">The public moment, or null.</param>
/// <param name="WorkMinutes">Minutes of work left for it, its tail included.</param>
/// <param name="Chain">Why it is ready no earlier: from the tail back.</param>
/// <param name="Tail">The parts of its tail that are left.</param>
public sealed record EpisodeEntry(
    string Id,
    string Title,
    string Series,
    bool Assumed,
    IReadOnlyList<string> Milestones,
    string? Ready,
    SlotEntry? Slot,
    string? Publish,
    int WorkMinutes,
    IReadOnlyList<ChainEntry> Chain,
    IReadOnlyList<StageEntry> Tail);

/// <summary>A slot.</summary>
/// <param name="Rule">The slot rule.</param>
/// <param name="Opening">When it opens, local time.</param>
public sealed record SlotEntry(string Rule, string Opening);

/// <summary>A step of a chain.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Name">The stage in words.</param>
/// <param name="Start">When it starts.</param>
/// <param name="Finish">When it is finished.</param>
/// <param name="Cause">Why it does not start earlier.</param>
public sealed record ChainEntry(KeyEntry Stage, string Name, string Start, string Finish, CauseEntry Cause);

/// <summary>The silences of a series or of the channel.</summary>
/// <param name="Id">The series; null for the channel.</param>
/// <param name="Name">Its name.</param>
/// <param name="State">active or resting.</param>
/// <param name="Promise">Its promise.</param>
/// <param name="LastUpload">The day of the last upload, or null.</param>
/// <param name="DaysSilent">Days since then, or null.</param>
/// <param name="DueBy">The last day that keeps the promise, or null.</param>
/// <param name="Past">The silences so far; the last one goes on.</param>
/// <param name="Forecast">The silences to come by plan; the last is open.</param>
/// <param name="Alarms">Where they go beyond the promise.</param>
/// <param name="LastPlanned">The last planned upload, or null.</param>
/// <param name="ForeseenSince">The moment since which the first of the alarms can be foreseen; null where there is none, or trials were not asked for.</param>
public sealed record SilenceEntry(
    string? Id,
    string Name,
    string State,
    PromiseEntry Promise,
    string? LastUpload,
    int? DaysSilent,
    string? DueBy,
    IReadOnlyList<SilenceSpan> Past,
    IReadOnlyList<SilenceSpan> Forecast,
    IReadOnlyList<AlarmEntry> Alarms,
    string? LastPlanned,
    string? ForeseenSince);

/// <summary>A promise: one of days and uploads a month.</summary>
/// <param name="LongestSilenceDays">The longest silence, days, or null.</param>
/// <param name="UploadsPerMonth">Uploads a calendar month, or null.</param>
/// <param name="Assumed">Whether nobody gave it.</param>
public sealed record PromiseEntry(int? LongestSilenceDays, int? UploadsPerMonth, bool Assumed);

/// <summary>A silence.</summary>
/// <param name="From">The day of the upload it follows.</param>
/// <param name="To">The day of the upload that ends it, or null.</param>
/// <param name="Days">Its days.</param>
public sealed record SilenceSpan(string From, string? To, int Days);

/// <summary>A silence beyond its promise.</summary>
/// <param name="Due">The last day within the promise.</param>
/// <param name="Ends">The day it ends by plan, or null.</param>
/// <param name="DaysOver">Days beyond the promise.</param>
/// <param name="Episode">The episode that ends it, or null.</param>
public sealed record AlarmEntry(string Due, string? Ends, int DaysOver, string? Episode);
