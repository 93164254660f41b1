using System.Text.Json;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.CouldPublish;

/// <summary>What each series could publish now.</summary>
public sealed record PublishNowDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The series that are told now.</summary>
    public required IReadOnlyList<PublishNowEntry> Series { get; init; }
}

/// <summary>What a series could publish now: an episode cut right behind what is done.</summary>
/// <param name="Series">The series.</param>
/// <param name="Done">The milestones that are done and not shown yet; none for an episode from footage.</param>
/// <param name="LowMinutes">Minutes on screen, hardly ever less; null where not known.</param>
/// <param name="HighMinutes">Minutes on screen, hardly ever more; null where not known.</param>
/// <param name="ShotsGot">How many shots are got.</param>
/// <param name="Shots">Of how many.</param>
/// <param name="Lacking">Required shots that are missing or lost.</param>
/// <param name="WorkMinutes">Minutes of work it needs still.</param>
/// <param name="Publish">The moment at which it would go out, or null.</param>
/// <param name="Uploads">The days of the series' uploads then.</param>
/// <param name="DaysOver">Days beyond the promise of the worst silence then.</param>
/// <param name="Change">The change that makes it, as it can be made; null where the plan has it so.</param>
/// <param name="HoursMore">Hours of work more than by the plan; negative for less.</param>
public sealed record PublishNowEntry(
    string Series,
    IReadOnlyList<string> Done,
    decimal? LowMinutes,
    decimal? HighMinutes,
    int ShotsGot,
    int Shots,
    IReadOnlyList<string> Lacking,
    int WorkMinutes,
    string? Publish,
    IReadOnlyList<string> Uploads,
    int DaysOver,
    JsonElement? Change,
    decimal HoursMore);

/// <summary>Makes documents of what could be published.</summary>
internal static class PublishNowDocuments
{
    /// <summary>The document.</summary>
    public static PublishNowDocument Of(Plan plan, IEnumerable<PublishNow> answers)
    {
        var values = new DocumentValues(plan.Zone);
        return new()
        {
            PlannedAt = values.Moment(plan.Request.PlannedAt),
            Series = [.. answers.Select(about => Of(about, values))],
        };
    }

    /// <summary>One series.</summary>
    public static PublishNowEntry Of(PublishNow about, DocumentValues values) => new(
        $"{about.Series.Id}",
        [.. about.Done.Select(milestone => $"{milestone.Id}")],
        about.ScreenMinutes?.Low,
        about.ScreenMinutes?.High,
        about.Shots.Count(shot => shot.State == ShotState.Got),
        about.Shots.Count,
        [.. about.Lacking.Select(shot => shot.Name)],
        about.Episode.WorkMinutes,
        about.Episode.Publish is { } moment ? values.Moment(moment) : null,
        [.. about.Outlook.Forecast.Select(silence => silence.To).OfType<NodaTime.LocalDate>().Select(day => DocumentValues.Day(day))],
        about.Outlook.WorstOver,
        about.Change is { } change ? JsonElement.Parse(ChangeFile.Write(change)) : null,
        decimal.Round(about.Difference.HoursMore, 2));
}
