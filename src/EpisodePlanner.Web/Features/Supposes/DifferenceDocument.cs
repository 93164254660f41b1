using System.Text.Json;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>What differs from the plan if something is supposed.</summary>
public sealed record DifferenceDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>What is supposed, each beside the same plan.</summary>
    public required IReadOnlyList<DifferenceEntry> Supposed { get; init; }
}

/// <summary>What differs.</summary>
/// <param name="Name">What is supposed.</param>
/// <param name="Change">The change, as it can be made.</param>
/// <param name="Uploads">Uploads that get another day, come, or go.</param>
/// <param name="Silences">Silences beyond promises that differ.</param>
/// <param name="HoursMore">Hours of hands-on work more; negative for less.</param>
/// <param name="WorkEnds">The moment at which all work is done, in the plan and then; null for none.</param>
/// <param name="Starts">What starts at another moment in the next seven days.</param>
/// <param name="Impossible">What can't be done then, and can by the plan.</param>
/// <param name="ChangedSince">What it touches and somebody changed since it was supposed; it has to be looked at before it is kept.</param>
public sealed record DifferenceEntry(
    string Name,
    JsonElement Change,
    IReadOnlyList<UploadDifferenceEntry> Uploads,
    IReadOnlyList<SilenceDifferenceEntry> Silences,
    decimal HoursMore,
    MomentPair WorkEnds,
    IReadOnlyList<StartDifferenceEntry> Starts,
    IReadOnlyList<string> Impossible,
    IReadOnlyList<string> ChangedSince);

/// <summary>An upload that differs.</summary>
/// <param name="Episode">The episode.</param>
/// <param name="Title">Its working title.</param>
/// <param name="Series">Its series.</param>
/// <param name="InPlan">Whether the plan has it.</param>
/// <param name="Supposed">Whether it is there if so is supposed.</param>
/// <param name="From">Its day in the plan, or null.</param>
/// <param name="To">Its day then, or null.</param>
public sealed record UploadDifferenceEntry(
    string Episode, string Title, string Series, bool InPlan, bool Supposed, string? From, string? To);

/// <summary>The silences of a series, or of the channel, that differ.</summary>
/// <param name="Series">The series; null for the channel.</param>
/// <param name="DaysOverFrom">Days beyond the promise of the worst silence, in the plan.</param>
/// <param name="DaysOverTo">The same then.</param>
/// <param name="BeyondFrom">How many silences are beyond the promise, in the plan.</param>
/// <param name="BeyondTo">The same then.</param>
public sealed record SilenceDifferenceEntry(string? Series, int DaysOverFrom, int DaysOverTo, int BeyondFrom, int BeyondTo);

/// <summary>A start that differs.</summary>
/// <param name="Name">The work.</param>
/// <param name="From">Its start in the plan, or null.</param>
/// <param name="To">Its start then, or null.</param>
public sealed record StartDifferenceEntry(string Name, string? From, string? To);

/// <summary>Two moments.</summary>
/// <param name="From">In the plan, or null.</param>
/// <param name="To">Then, or null.</param>
public sealed record MomentPair(string? From, string? To);

/// <summary>Makes documents of what is supposed.</summary>
internal sealed class DifferenceDocuments(Plan plan)
{
    private readonly DocumentValues values = new(plan.Zone);

    /// <summary>The document.</summary>
    public DifferenceDocument Of(IEnumerable<DifferenceEntry> supposed) => new()
    {
        PlannedAt = values.Moment(plan.Request.PlannedAt),
        Supposed = [.. supposed],
    };

    /// <summary>What differs.</summary>
    /// <param name="name">What is supposed.</param>
    /// <param name="change">The change.</param>
    /// <param name="difference">The plan, and the plan after the change.</param>
    /// <param name="changedSince">What it touches and somebody changed since, in words.</param>
    public DifferenceEntry Of(string name, Change change, PlanDifference difference, IEnumerable<string> changedSince) => new(
        name,
        JsonElement.Parse(ChangeFile.Write(change)),
        [
            .. difference.Moved.Select(move => new UploadDifferenceEntry(
                $"{move.Episode}", move.Title, $"{move.Series}", true, true, DocumentValues.Day(move.From), DocumentValues.Day(move.To))),
            .. difference.Added.Select(episode => new UploadDifferenceEntry(
                $"{episode.Id}", episode.Title, $"{episode.Series}", false, true, null, DocumentValues.Day(episode.Date))),
            .. difference.Gone.Select(episode => new UploadDifferenceEntry(
                $"{episode.Id}", episode.Title, $"{episode.Series}", true, false, DocumentValues.Day(episode.Date), null)),
        ],
        [.. difference.Outlooks.Where(HasOtherAlarms).Select(Of)],
        decimal.Round(difference.HoursMore, 2),
        new MomentPair(Moment(difference.WorkEnds.Before), Moment(difference.WorkEnds.Then)),
        [.. difference.Starts.Select(change => new StartDifferenceEntry(change.Stage.Name, Moment(change.From), Moment(change.To)))],
        [.. difference.NewlyImpossible.Select(finding => finding.Says)],
        [.. changedSince]);

    private static bool HasOtherAlarms(OutlookChange change) => !change.Before.Alarms.Equals(change.Then.Alarms);

    private static SilenceDifferenceEntry Of(OutlookChange change) => new(
        DocumentValues.Name(change.Before.Series),
        change.Before.WorstOver,
        change.Then.WorstOver,
        change.Before.Alarms.Count,
        change.Then.Alarms.Count);

    private string? Moment(NodaTime.Instant? moment) => moment is { } known ? values.Moment(known) : null;
}
