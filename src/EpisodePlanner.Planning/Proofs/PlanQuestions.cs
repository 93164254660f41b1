using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Puts plans in whole numbers.</summary>
internal static class PlanQuestions
{
    /// <summary>The question of a plan, and the draft it was made from.</summary>
    public static (PlanQuestion Question, PlanDraft Draft) Of(Plan plan)
    {
        var horizon = (int)(plan.Horizon - plan.Request.PlannedAt).TotalMinutes;
        var draft = PlanDraft.Make(plan.Request, plan.Zone, horizon);
        var episodes = draft.Episodes.Episodes;
        var published = plan.Episodes.ToDictionary(
            episode => episode.Id, episode => episode.Publish is { } publish ? draft.Axis.MinuteOf(publish) : -1);
        return (new PlanQuestion
        {
            Known = plan.Schedule,
            Episodes = episodes.Select(row => new AskedEpisode(
                row.Upcoming.Episode.Id,
                row.Series,
                row.ReadyStage,
                row.FixesStage,
                row.Lead,
                row.PinnedOpening,
                published[row.Upcoming.Episode.Id])).ToValueList(),
            Series = draft.Episodes.Series.Select(series => new AskedSeries(series.Episodes)).ToValueList(),
            Windows = draft.Slots.Select(window => new AskedWindow(
                window.Opening,
                window.End,
                SilencePenalty.DayNumber(window.LocalOpening.Date),
                Enumerable.Range(0, draft.Episodes.Series.Count)
                    .Where(series => window.Admits(draft.Episodes.Series[series].Series.Id)).ToValueList())).ToValueList(),
            DaysBetweenUploads = draft.Workshop.Settings.DaysBetweenUploads ?? 0,
            LastUploadDay = Planner.LastChannelUpload(draft) is { } day ? SilencePenalty.DayNumber(day) : int.MinValue / 2,
        }, draft);
    }
}
