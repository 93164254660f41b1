namespace EpisodePlanner.Planning;

/// <summary>Episodes that need no more of the build: from footage that exists, and from a failure that was filmed.</summary>
public static class OtherEpisodes
{
    /// <summary>What could be told of a series without its next milestone, each with a real plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series; nothing is proposed for one that rests or is finished.</param>
    /// <param name="stop">Ends the trials.</param>
    public static ValueList<StoryProposal> Of(Plan plan, Id series, CancellationToken stop = default) => Changes(plan, series)
        .Select(idea => StoryProposal.Of(plan, idea.Move, idea.Says, (series, idea.About), idea.Change, stop))
        .OfType<StoryProposal>()
        .ToValueList();

    /// <summary>The same, not planned yet.</summary>
    internal static IEnumerable<StoryIdea> Changes(Plan plan, Id series)
    {
        var workshop = plan.Request.Workshop;
        return workshop.Series.Find(series) is { State: SeriesState.Active } about
            ? Failures(workshop, about).Select(entry => Failure(plan, about, entry)).Append(Footage(workshop, about))
            : [];
    }

    private static StoryIdea Footage(Workshop workshop, Series series)
    {
        var episode = new Episode
        {
            Id = CutChanges.FreeId(workshop, $"{series.Id}-footage"),
            Title = $"{series.Name}: what is filmed",
            Series = series.Id,
        };
        return new StoryIdea(
            StoryMove.FromFootage,
            "an episode is made of footage that exists, if there is enough of it",
            null,
            new EpisodeChange(episode.Id, episode));
    }

    private static StoryIdea Failure(Plan plan, Series series, LogEntry entry)
    {
        var task = plan.Request.Workshop.Tasks.Find(entry.Task!.Value)!;
        var episode = new Episode
        {
            Id = CutChanges.FreeId(plan.Request.Workshop, $"{task.Id}-failed"),
            Title = $"{series.Name}: {task.Name} failed",
            Series = series.Id,
            Tells = entry.Id,
        };
        return new StoryIdea(
            StoryMove.TellFailure,
            $"the failure of \u201c{task.Name}\u201d on {Words.Day(entry.At.InZone(plan.Zone).Date)} becomes an episode: its pictures are there",
            entry.Id,
            new EpisodeChange(episode.Id, episode));
    }

    /// <summary>
    /// Failures that no episode tells and whose pictures are there: at least one is got, and none that
    /// the story can't do without is missing or lost.
    /// </summary>
    private static IEnumerable<LogEntry> Failures(Workshop workshop, Series series)
    {
        var tasks = PlanDraft.SeriesByTask(workshop);
        var told = workshop.Episodes.Select(episode => episode.Tells).OfType<Id>().ToHashSet();
        return workshop.Log
            .Where(entry => entry.Outcome == LogOutcome.Failed
                && entry.Task is { } task
                && tasks.GetValueOrDefault(task)?.Id == series.Id
                && !told.Contains(entry.Id)
                && IsFilmed(workshop.Tasks.Find(task)!))
            .OrderByDescending(entry => entry.At)
            .ThenBy(entry => entry.Id);
    }

    private static bool IsFilmed(WorkTask task) =>
        task.Shots.Any(shot => shot.State == ShotState.Got)
        && task.Shots.All(shot => shot.State == ShotState.Got || !shot.Required);
}
