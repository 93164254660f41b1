using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// When each result is wanted, as a hint for the order in which stages are tried: told dates and pinned slots; else the
/// promise of the series, counted on from its last upload, an episode after the other.
/// </summary>
internal static class DueDates
{
    public static void Set(PlanDraft draft)
    {
        foreach (var series in draft.Episodes.Series)
        {
            SetSeries(draft, series);
        }

        foreach (var (stage, by) in NeededBy(draft))
        {
            draft.Bench.Replace(stage, s => s with { Due = Math.Min(s.Due, by), DueIsFirm = true });
        }
    }

    /// <summary>The last stages of tasks with a date from outside, and the minutes by which these are needed.</summary>
    public static IEnumerable<(int Stage, int By)> NeededBy(PlanDraft draft) =>
        from task in draft.Workshop.Tasks
        where task.NeededBy is not null && task.Stages.Count > 0
        let stage = draft.Bench.Find(StageKey.OfTask(task.Id, task.Stages[^1].Id))
        where stage is not null
        select (stage.Value, Math.Max(0, draft.Axis.MinuteOf(task.NeededBy!.Value.PlusDays(1))));

    private static void SetSeries(PlanDraft draft, SeriesRow series)
    {
        var day = series.SilentFrom;
        foreach (var index in series.Episodes)
        {
            var episode = draft.Episodes.Episodes[index];
            day += series.LongestSilence;
            var promised = draft.Axis.MinuteOf(SilenceDay(day + 1));
            var due = episode.PinnedOpening >= 0 ? episode.PinnedOpening : episode.ToldBy >= 0 ? episode.ToldBy : promised;
            var firm = episode.PinnedOpening >= 0 || episode.ToldBy >= 0;
            foreach (var stage in (int[])[episode.ReadyStage, episode.FixesStage])
            {
                if (stage >= 0)
                {
                    draft.Bench.Replace(stage, s => s with { Due = Math.Max(0, due - episode.Lead), DueIsFirm = firm, DueGroup = episode.Series });
                }
            }
        }
    }

    private static LocalDate SilenceDay(int number) => new LocalDate(1970, 1, 1).PlusDays(number);
}
