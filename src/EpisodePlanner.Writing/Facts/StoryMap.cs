using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Which work leads to which milestone.</summary>
/// <remarks>
/// Work that names no milestone but that work of a milestone waits for (bought parts, a jig) is told with the first
/// milestone, in story order, that needs it.
/// </remarks>
internal sealed class StoryMap
{
    private readonly Workshop workshop;
    private readonly Dictionary<Id, (Series Series, Milestone Milestone)> milestones = [];
    private readonly Dictionary<Id, Id> milestoneOf = [];
    private readonly ILookup<Id, WorkTask> tasksOf;
    private readonly ILookup<Id, WorkTask> namedBy;

    public StoryMap(Workshop workshop)
    {
        this.workshop = workshop;
        namedBy = workshop.Tasks.Where(task => task.Milestone is not null).ToLookup(task => task.Milestone!.Value);
        foreach (var series in workshop.Series)
        {
            AddStory(series);
        }

        tasksOf = workshop.Tasks.Where(task => milestoneOf.ContainsKey(task.Id)).ToLookup(task => milestoneOf[task.Id]);
    }

    /// <summary>The milestones an episode shows, in story order; unknown ones are left out.</summary>
    public IEnumerable<Milestone> MilestonesOf(PlannedEpisode episode)
    {
        var story = workshop.Series.Find(episode.Series)?.Milestones ?? [];
        return story.Where(milestone => episode.Milestones.Contains(milestone.Id));
    }

    /// <summary>The work that leads to a milestone, by id.</summary>
    public IEnumerable<WorkTask> TasksOf(Milestone milestone) => tasksOf[milestone.Id];

    /// <summary>The work that leads to the milestones of an episode, in story order.</summary>
    public IEnumerable<WorkTask> TasksOf(PlannedEpisode episode) => MilestonesOf(episode).SelectMany(TasksOf);

    /// <summary>These tasks and all they wait for.</summary>
    public IReadOnlyList<WorkTask> WithWhatTheyWaitFor(IEnumerable<WorkTask> tasks) => Walk(tasks, _ => true);

    /// <summary>The series of a task; null for work on the workshop itself.</summary>
    public Id? SeriesOf(WorkTask task) =>
        task.Milestone is { } id && milestones.TryGetValue(id, out var found) ? found.Series.Id : task.Series;

    private void AddStory(Series series)
    {
        foreach (var milestone in series.Milestones)
        {
            milestones[milestone.Id] = (series, milestone);
            foreach (var task in Walk(namedBy[milestone.Id], task => task.Milestone is null))
            {
                milestoneOf.TryAdd(task.Id, milestone.Id);
            }
        }
    }

    private List<WorkTask> Walk(IEnumerable<WorkTask> from, Func<WorkTask, bool> enter)
    {
        var found = from.ToList();
        var seen = found.Select(task => task.Id).ToHashSet();
        for (var i = 0; i < found.Count; i++)
        {
            var before = found[i].Links.Select(link => workshop.Tasks.Find(link.Task)).OfType<WorkTask>();
            found.AddRange(before.Where(task => enter(task) && seen.Add(task.Id)));
        }

        return found;
    }
}
