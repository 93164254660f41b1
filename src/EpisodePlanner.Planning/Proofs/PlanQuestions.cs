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
            Windows = Windows(draft),
            DaysBetweenUploads = draft.Workshop.Settings.DaysBetweenUploads ?? 0,
            LastUploadDay = LastUploadDay(draft),
            Aims = plan.Stages.All(stage => stage.Parts.Count > 0) && plan.Episodes.All(episode => episode.Publish is not null)
                ? Aims(plan, draft)
                : null,
        }, draft);
    }

    /// <summary>The windows of a draft.</summary>
    public static ValueList<AskedWindow> Windows(PlanDraft draft) => draft.Slots.Select(window => new AskedWindow(
        window.Opening,
        window.End,
        SilencePenalty.DayNumber(window.LocalOpening.Date),
        SilencePenalty.DayNumber(draft.Axis.DateOf(Math.Max(window.Opening, window.End - 1))),
        Enumerable.Range(0, draft.Episodes.Series.Count)
            .Where(series => window.Admits(draft.Episodes.Series[series].Series.Id)).ToValueList())).ToValueList();

    /// <summary>The day of the channel's last upload; far in the past for none.</summary>
    public static int LastUploadDay(PlanDraft draft) =>
        Planner.LastChannelUpload(draft) is { } day ? SilencePenalty.DayNumber(day) : int.MinValue / 2;

    private static PlanAims Aims(Plan plan, PlanDraft draft)
    {
        var input = Planner.Input(draft, AcceptedOrder.Of(draft));
        var episodes = draft.Episodes.Episodes;
        var told = Enumerable.Range(0, episodes.Count).Where(e => episodes[e].ToldBy >= 0)
            .Select(e => new AskedDate(e, episodes[e].ToldBy - 1));
        var pinned = Enumerable.Range(0, episodes.Count).Where(e => episodes[e].PinnedOpening >= 0)
            .Select(e => new AskedDate(e, input.PinnedUntil(episodes[e])));
        return new PlanAims
        {
            Reached = plan.Weights,
            NeededBy = input.NeededBy.Select(x => new AskedDate(x.Stage, x.By)).ToValueList(),
            PublicBy = told.Concat(pinned).ToValueList(),
            Accepted = input.AcceptedStarts.Select(x => new AskedDate(x.Stage, x.Start)).ToValueList(),
            Promises = draft.Episodes.Series
                .Select(series => new AskedPromise(series.SilentFrom, series.Promise.LongestSilenceDays)).ToValueList(),
            Channel = new AskedPromise(input.ChannelSilentFrom, input.ChannelPromise),
            LastDay = input.LastDayNumber,
        };
    }
}
