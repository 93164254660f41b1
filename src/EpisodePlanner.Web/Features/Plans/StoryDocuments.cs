using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Episodes and silences of a document.</summary>
internal sealed class StoryDocuments(DocumentValues values)
{
    /// <summary>Chains of one plan share most of their steps.</summary>
    private readonly Dictionary<ChainLink, ChainEntry> steps = [];

    public EpisodeEntry Episode(PlannedEpisode episode, IReadOnlyList<StageEntry> tail) => new(
        $"{episode.Id}",
        episode.Title,
        $"{episode.Series}",
        episode.Assumed,
        [.. episode.Milestones.Select(id => $"{id}")],
        values.Moment(episode.Ready),
        episode.Slot is { } slot ? new SlotEntry($"{slot.Rule}", DocumentValues.Local(slot.LocalOpening)) : null,
        values.Moment(episode.Publish),
        episode.WorkMinutes,
        Chain(episode),
        tail);

    public IReadOnlyList<ChainEntry> Chain(PlannedEpisode episode) => [.. episode.Chain.Select(Step)];

    public SilenceEntry Silences(Outlook outlook, PlanAdvice advice) => new(
        DocumentValues.Name(outlook.Series),
        outlook.Name,
        DocumentValues.Word(outlook.State),
        new PromiseEntry(outlook.Promise.LongestSilenceDays, outlook.Promise.UploadsPerMonth, outlook.PromiseAssumed),
        DocumentValues.Day(outlook.LastUpload),
        outlook.DaysSilent,
        DocumentValues.Day(outlook.DueBy),
        [.. outlook.Past.Select(Span)],
        [.. outlook.Forecast.Select(Span)],
        [.. outlook.Alarms.Select(Alarm)],
        DocumentValues.Day(outlook.LastPlanned),
        advice.Foreseen.TryGetValue(outlook.Series, out var since) ? values.Moment(since.Since) : null);

    private ChainEntry Step(ChainLink link)
    {
        if (!steps.TryGetValue(link, out var entry))
        {
            entry = new ChainEntry(
                DocumentValues.Key(link.Stage),
                link.Name,
                values.Moment(link.Start),
                values.Moment(link.Finish),
                DocumentValues.Cause(link.Cause));
            steps.Add(link, entry);
        }

        return entry;
    }

    private static SilenceSpan Span(Silence silence) =>
        new(DocumentValues.Day(silence.From), DocumentValues.Day(silence.To), silence.Days);

    private static AlarmEntry Alarm(SilenceAhead alarm) => new(
        DocumentValues.Day(alarm.Due), DocumentValues.Day(alarm.Ends), alarm.DaysOver, DocumentValues.Name(alarm.Episode));
}
