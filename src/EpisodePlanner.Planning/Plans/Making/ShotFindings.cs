namespace EpisodePlanner.Planning;

/// <summary>What a plan has to say about shots: cuts whose required pictures are lost, and shots that come too late by order.</summary>
internal static class ShotFindings
{
    public static IEnumerable<Finding> Of(PlanDraft draft) => Lost(draft).Concat(draft.Films.Unordered.Select(Unordered));

    private static IEnumerable<Finding> Lost(PlanDraft draft)
    {
        var tasks = draft.Workshop.Tasks.Where(task => task.Milestone is not null).ToLookup(task => task.Milestone!.Value);
        return
            from row in draft.Episodes.Episodes
            let episode = row.Upcoming.Episode
            from milestone in row.Upcoming.Series.Milestones.Where(milestone => episode.Milestones.Contains(milestone.Id))
            from task in tasks[milestone.Id]
            from shot in task.Shots
            where shot is { Required: true, State: ShotState.Lost }
            select Lost(episode, milestone, task, shot);
    }

    private static Finding Lost(Episode episode, Milestone milestone, WorkTask task, Shot shot)
    {
        var again = shot.OnceOnly ? "" : $"take it again and say that it is got, ";
        return new Finding(
            FindingKind.Missed,
            $"$.episodes['{episode.Id}']",
            $"Required shot lost: \u201c{shot.Name}\u201d ({Moment(shot)} \u201c{task.Name}\u201d), which \u201c{episode.Title}\u201d needs. "
            + $"What would help: {again}tell that part without it, or leave \u201c{milestone.Name}\u201d out of this episode.");
    }

    private static string Moment(Shot shot) => shot.Moment switch
    {
        ShotMoment.Before => "before",
        ShotMoment.During => "during",
        _ => "after",
    };

    private static Finding Unordered((WorkTask Task, Shot Shot) film) => new(
        FindingKind.Note,
        $"$.tasks['{film.Task.Id}']",
        $"\u201c{film.Shot.Name}\u201d is to be filmed after \u201c{film.Task.Name}\u201d and before the task that it is lost by, "
        + "but that task comes first in the order of the work: name a later one, or film the shot before or during its task.");
}
