using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A workshop turned into a bench problem with its episodes and slots, for one horizon.</summary>
internal sealed class PlanDraft
{
    private PlanDraft(PlanRequest request, TimeAxis axis)
    {
        Request = request;
        Axis = axis;
        Progress = new WorkProgress(request.Workshop, request.PlannedAt);
        Stations = new StationTable(request.Workshop, axis);
        Bench = new BenchDraft();
        Slots = SlotWindows.Of(SlotRulesOf(request.Workshop), request.Workshop.Settings.DaysToAvoid, axis);
        var modes = new StageModes(request.Workshop, Stations);
        Links = new TaskLinks(request.Workshop, axis, Progress, Stations, Bench);
        Films = new FilmStages(this, modes);
        AddTasks(modes);
        Episodes = new EpisodeTableBuilder(this, modes).Build();
        DueDates.Set(this);
        Problem = Create();
    }

    public PlanRequest Request { get; }

    public Workshop Workshop => Request.Workshop;

    public TimeAxis Axis { get; }

    public WorkProgress Progress { get; }

    public StationTable Stations { get; }

    public BenchDraft Bench { get; }

    public TaskLinks Links { get; }

    /// <summary>The missing shots that have time of their own.</summary>
    public FilmStages Films { get; }

    public ValueList<SlotWindow> Slots { get; }

    public EpisodeTable Episodes { get; }

    public BenchProblem Problem { get; }

    /// <summary>Makes the draft for a horizon.</summary>
    public static PlanDraft Make(PlanRequest request, DateTimeZone zone, int horizon) =>
        new(request, new TimeAxis(request.PlannedAt, zone, horizon));

    public static IEnumerable<SlotRule> SlotRulesOf(Workshop workshop) =>
        workshop.SlotRules.Count > 0 ? workshop.SlotRules : [Defaults.Fridays];

    /// <summary>The series a task serves, through its milestone or directly; null for work on the workshop itself.</summary>
    public static IReadOnlyDictionary<Id, Series> SeriesByTask(Workshop workshop)
    {
        var byMilestone = workshop.Series.SelectMany(s => s.Milestones, (s, m) => (m.Id, s)).ToDictionary(x => x.Id, x => x.s);
        return workshop.Tasks
            .Select(t => (t.Id, Series: t.Milestone is { } m ? byMilestone.GetValueOrDefault(m) : workshop.Series.Find(t.Series ?? default)))
            .Where(x => x.Series is not null)
            .ToDictionary(x => x.Id, x => x.Series!);
    }

    /// <summary>
    /// Tasks in the order that breaks ties: the series whose promise breaks first, then names and ids. Tasks of finished
    /// series are left out.
    /// </summary>
    private void AddTasks(StageModes modes)
    {
        var series = SeriesByTask(Workshop);
        var breaks = Workshop.Series.ToDictionary(s => s.Id, s => BreaksOn(s));
        var stages = new TaskStages(Workshop, Axis, Progress, modes);
        var tasks = Workshop.Tasks
            .Select(task => (Task: task, Series: series.GetValueOrDefault(task.Id)))
            .Where(x => x.Series is not { State: SeriesState.Finished })
            .OrderBy(x => x.Series is null ? LocalDate.MaxIsoValue : breaks[x.Series.Id])
            .ThenBy(x => x.Series?.Name ?? "", StringComparer.Ordinal)
            .ThenBy(x => x.Task.Name, StringComparer.Ordinal)
            .ThenBy(x => x.Task.Id)
            .ToList();
        foreach (var (task, owner) in tasks)
        {
            stages.AddTo(Bench, task, owner);
        }

        foreach (var (task, _) in tasks)
        {
            Links.AddTo(task);
        }

        foreach (var (task, owner) in tasks)
        {
            Films.AddTo(task, owner);
        }
    }

    private LocalDate BreaksOn(Series series)
    {
        var today = Axis.DateOf(0);
        var uploads = UploadDays.OfSeries(Workshop, series.Id).Where(day => day <= today).ToList();
        var (promise, _) = EpisodeTable.PromiseOf(Workshop, series);
        return PromiseKeeping.DueBy(uploads, promise) ?? today;
    }

    private BenchProblem Create()
    {
        var result = BenchProblem.Create(new BenchInput
        {
            Horizon = Axis.Horizon,
            Presence = Stations.Presence,
            Stations = Stations.Stations,
            Limits = Stations.Limits,
            Stages = [.. Bench.Stages.Select(s => s.Stage)],
            Links = Bench.Links,
        });
        return result is BenchProblemResult.Sound sound
            ? sound.Problem
            : throw new InvalidOperationException(
                $"A sound workshop gave no sound problem: {string.Join(" ", ((BenchProblemResult.Refused)result).Reasons)}");
    }
}
