using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>A plan and its workshop, looked up the way a writer asks. Nothing later than the plan's moment is in it.</summary>
internal sealed class Ledger
{
    private readonly ILookup<Id, LogEntry> logByTask;
    private readonly ILookup<Id, LogEntry> logByEpisode;
    private readonly ILookup<Id, PlannedStage> stagesByTask;
    private readonly ILookup<Id, PlannedStage> tails;
    private readonly Dictionary<StageKey, PlannedStage> films;

    public Ledger(Plan plan)
    {
        Plan = plan;
        Story = new StoryMap(Workshop);
        Log = [.. Workshop.Log.Where(entry => entry.At <= plan.Request.PlannedAt).OrderBy(entry => entry.At)];
        logByTask = Log.Where(entry => entry.Task is not null).ToLookup(entry => entry.Task!.Value);
        logByEpisode = Log.Where(entry => entry.Episode is not null).ToLookup(entry => entry.Episode!.Value);
        stagesByTask = plan.Stages.Where(stage => stage.Key.IsTask).ToLookup(stage => stage.Key.Task);
        films = plan.Stages.Where(stage => stage.Key.IsShot).ToDictionary(stage => stage.Key);
        tails = plan.Stages.Where(stage => stage.Key.IsTail).ToLookup(stage => stage.Key.Episode);
    }

    public Plan Plan { get; }

    public Workshop Workshop => Plan.Request.Workshop;

    public StoryMap Story { get; }

    /// <summary>The log in the order in which it happened.</summary>
    public IReadOnlyList<LogEntry> Log { get; }

    public LocalDate Today => Plan.Now.Date;

    public ZonedDateTime At(Instant moment) => moment.InZone(Plan.Zone);

    public IEnumerable<LogEntry> LogOf(WorkTask task) => logByTask[task.Id];

    public IEnumerable<LogEntry> LogOf(PlannedEpisode episode) => logByEpisode[episode.Id];

    /// <summary>What is left of a task, in the plan's order.</summary>
    public IEnumerable<PlannedStage> Left(WorkTask task) => stagesByTask[task.Id];

    /// <summary>The time that the plan keeps for a shot; null where it keeps none.</summary>
    public PlannedStage? Film(WorkTask task, Shot shot) => films.GetValueOrDefault(StageKey.OfShot(task.Id, shot.Id));

    /// <summary>What is left of an episode's tail, in working order.</summary>
    public IEnumerable<PlannedStage> Tail(PlannedEpisode episode) =>
        tails[episode.Id].OrderBy(stage => stage.Key.Part);

    /// <summary>The log entry that finished a task; null while anything of it is left or nothing finished is logged.</summary>
    public LogEntry? FinishedBy(WorkTask task) =>
        Left(task).Any() ? null : LogOf(task).LastOrDefault(entry => entry.Outcome == LogOutcome.Done);

    /// <summary>The log entry that began a task, or null.</summary>
    public LogEntry? BegunBy(WorkTask task) => LogOf(task).FirstOrDefault();

    /// <summary>The series a log entry belongs to; null for work on the workshop itself.</summary>
    public Id? SeriesOf(LogEntry entry) => entry switch
    {
        { Task: { } id } when Workshop.Tasks.Find(id) is { } task => Story.SeriesOf(task),
        { Episode: { } id } => Plan.Episodes.FirstOrDefault(episode => episode.Id == id)?.Series
            ?? Workshop.Episodes.Find(id)?.Series,
        _ => null,
    };
}
