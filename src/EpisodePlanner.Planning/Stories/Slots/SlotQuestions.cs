namespace EpisodePlanner.Planning;

/// <summary>Asks for slots, once a schedule says when each episode is ready.</summary>
internal static class SlotQuestions
{
    /// <summary>The question that a plan leaves.</summary>
    /// <param name="drafted">The plan with what it was made from.</param>
    /// <param name="through">The last day that counts, so that several plans are weighed alike.</param>
    public static SlotQuestion Of(DraftedPlan drafted, int through)
    {
        var (plan, draft, sweep) = (drafted.Plan, drafted.Draft, drafted.Sweep);
        var input = Planner.Input(draft, AcceptedOrder.Of(draft));
        var finishes = plan.Schedule.Finishes();
        return new SlotQuestion
        {
            Windows = PlanQuestions.Windows(draft),
            Episodes = draft.Episodes.Episodes.Select(row => Episode(draft, input, row, finishes)).ToValueList(),
            Series = draft.Episodes.Series.Select(series => Series(draft, sweep, series)).ToValueList(),
            Channel = new SlotPromise(input.ChannelSilentFrom, input.ChannelPromise, Last(sweep.Days, input.ChannelSilentFrom)),
            DaysBetweenUploads = draft.Workshop.Settings.DaysBetweenUploads ?? 0,
            LastUploadDay = PlanQuestions.LastUploadDay(draft),
            Through = through,
            Never = draft.Axis.Horizon,
        };
    }

    private static SlotEpisode Episode(PlanDraft draft, ObjectiveInput input, EpisodeRow row, int[] finishes)
    {
        var available = SlotSweep.AvailableFrom(row, finishes);
        var by = new List<int>();
        if (row.ToldBy >= 0)
        {
            by.Add(row.ToldBy - 1);
        }

        if (row.PinnedOpening >= 0)
        {
            by.Add(input.PinnedUntil(row));
        }

        var day = available < 0 ? -1 : SilencePenalty.DayNumber(draft.Axis.DateOf(available));
        return new SlotEpisode(row.Series, available, day, row.PinnedOpening, by.ToValueList());
    }

    private static SlotSeries Series(PlanDraft draft, SlotSweep sweep, SeriesRow row)
    {
        var last = Last(row.Episodes.Select(episode => sweep.Days[episode]), row.SilentFrom);
        var promise = new SlotPromise(row.SilentFrom, row.LongestSilence, last);
        if (row.Promise.UploadsPerMonth is { } each && row.Uploads.Count > 0)
        {
            var months = SilencePenalty.Months(row.Uploads[0], draft.Axis.DateOf(draft.Axis.Horizon));
            promise = promise with
            {
                Months = new SlotMonths(each, row.Uploads.Select(SilencePenalty.DayNumber).ToValueList(), months.ToValueList()),
            };
        }

        return new SlotSeries(promise, row.Episodes);
    }

    private static int Last(IEnumerable<int> days, int from) => days.Append(from).Max();
}
