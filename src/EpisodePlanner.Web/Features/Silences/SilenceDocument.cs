using System.Text.Json;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.CouldPublish;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Why;

namespace EpisodePlanner.Web.Features.Silences;

/// <summary>Silences beyond promises and what can be done about each; everything was tried by planning again.</summary>
public sealed record SilencesDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The silences, the first to break its promise first, the channel's last.</summary>
    public required IReadOnlyList<SilenceRemediesEntry> Silences { get; init; }

    /// <summary>What each series could publish now; on the command line only, over HTTP it is asked for by itself.</summary>
    public IReadOnlyList<PublishNowEntry>? CouldPublish { get; init; }
}

/// <summary>A silence beyond its promise.</summary>
/// <param name="Series">The series; null for the channel.</param>
/// <param name="Due">The last day within the promise.</param>
/// <param name="Ends">The day it ends by plan, or null.</param>
/// <param name="DaysOver">Days beyond the promise.</param>
/// <param name="ForeseenSince">The moment since which it can be foreseen; null where it was stopped before that was looked at.</param>
/// <param name="Helping">What wins days, the least left first.</param>
/// <param name="InVain">What was tried and wins nothing.</param>
/// <param name="Rest">What openly resting would do; null for the channel.</param>
public sealed record SilenceRemediesEntry(
    string? Series,
    string Due,
    string? Ends,
    int DaysOver,
    string? ForeseenSince,
    IReadOnlyList<RemedyEntry> Helping,
    IReadOnlyList<string> InVain,
    RemedyEntry? Rest);

/// <summary>A way out of a silence.</summary>
/// <param name="Kind">cut, otherEpisode, bench, putOff, pair or rest.</param>
/// <param name="Says">It in words.</param>
/// <param name="Change">The change, as it can be made.</param>
/// <param name="DaysWon">Days by which the worst silence to come is less beyond its promise.</param>
/// <param name="DaysOverLeft">Days beyond the promise that are left.</param>
/// <param name="HoursMore">Hours of work more; negative for less.</param>
/// <param name="Later">Uploads that are later then.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record RemedyEntry(
    string Kind,
    string Says,
    JsonElement Change,
    int DaysWon,
    int DaysOverLeft,
    decimal HoursMore,
    IReadOnlyList<DayMoveEntry> Later,
    IReadOnlyList<CautionEntry> Cautions) : IComputedDocument;

/// <summary>Ways out of one silence, in the order in which they were found.</summary>
/// <param name="Found">The ways out that win days; pairs come last.</param>
public sealed record FoundRemediesDocument(IReadOnlyList<RemedyEntry> Found) : IComputedDocument;

/// <summary>Makes documents of silences.</summary>
internal sealed class SilenceDocuments(Plan plan)
{
    private readonly DocumentValues values = new(plan.Zone);

    /// <summary>The document.</summary>
    public SilencesDocument Of(IEnumerable<SilenceRemedies> silences) => new()
    {
        PlannedAt = values.Moment(plan.Request.PlannedAt),
        Silences = [.. silences.Select(Of)],
    };

    private SilenceRemediesEntry Of(SilenceRemedies silence) => new(
        DocumentValues.Name(silence.Outlook.Series),
        DocumentValues.Day(silence.Alarm.Due),
        DocumentValues.Day(silence.Alarm.Ends),
        silence.Alarm.DaysOver,
        silence.Foreseen is { } since ? values.Moment(since.Since) : null,
        [.. silence.Helping.Select(Of)],
        silence.InVain,
        silence.Rest is { } rest ? Of(rest) : null);

    public static RemedyEntry Of(Remedy remedy) => new(
        DocumentValues.Word(remedy.Kind),
        remedy.Says,
        JsonElement.Parse(ChangeFile.Write(remedy.Change)),
        remedy.DaysWon,
        remedy.OverThen,
        decimal.Round(remedy.Difference.HoursMore, 2),
        [.. remedy.Later.Select(move => new DayMoveEntry($"{move.Episode}", DocumentValues.Day(move.From), DocumentValues.Day(move.To)))],
        [.. remedy.Cautions.Select(caution => new CautionEntry(caution.Topic, caution.Text, caution.Source, caution.Defers))]);
}
