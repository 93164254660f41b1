using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Turns what is left of one task into stages of the bench problem, chained in working order.</summary>
internal sealed class TaskStages
{
    private readonly Workshop workshop;
    private readonly TimeAxis axis;
    private readonly WorkProgress progress;
    private readonly StageModes modes;
    private readonly StageEstimator estimator;
    private readonly Lazy<IntervalCalendar> businessDays;

    public TaskStages(Workshop workshop, TimeAxis axis, WorkProgress progress, StageModes modes)
    {
        this.workshop = workshop;
        this.axis = axis;
        this.progress = progress;
        this.modes = modes;
        estimator = new StageEstimator(workshop.Settings);
        businessDays = new Lazy<IntervalCalendar>(() => HoursCalendar.BusinessDays(axis));
    }

    /// <summary>Adds the stages of a task that are not done.</summary>
    public void AddTo(BenchDraft draft, WorkTask task, Series? series)
    {
        var filming = task.FilmingMinutes;
        var before = -1;
        Instant? beforeDoneAt = null;
        foreach (var stage in task.Stages)
        {
            var state = progress.Of(StageKey.OfTask(task.Id, stage.Id));
            if (state.IsDone)
            {
                beforeDoneAt = state.DoneAt;
                filming = stage.Kind == StageKind.Attended ? 0 : filming;
                continue;
            }

            var bench = Stage(task, stage, series, state, before < 0 ? beforeDoneAt : null);
            if (stage.Kind == StageKind.Attended)
            {
                bench = bench with { Minutes = bench.Minutes + filming };
                filming = 0;
            }

            before = Append(draft, task, stage, series, bench, before);
        }
    }

    private static int Append(BenchDraft draft, WorkTask task, Stage stage, Series? series, BenchStage bench, int before)
    {
        if (before >= 0 && IsGlued(bench, draft.Stages[before].Stage))
        {
            // Its date, if the task has one, binds the work that it follows without a gap.
            bench = bench with { GluedTo = before, NotBefore = 0 };
        }

        var key = StageKey.OfTask(task.Id, stage.Id);
        var index = draft.Add(new DraftStage(key, bench, series?.Id ?? default, task.Kind));
        if (before >= 0)
        {
            draft.Add(new BenchLink(before, index, LinkKind.After));
        }

        return index;
    }

    /// <summary>A wait that fills the place where the stage before was worked on goes on filling it without a gap.</summary>
    private static bool IsGlued(BenchStage wait, BenchStage before) =>
        wait is { Kind: StageKind.Wait, Begun: false, Modes.Count: 1 }
        && wait.Modes[0].Stations.Count > 0
        && before.Kind == StageKind.Attended
        && before.Minutes > 0
        && before.Modes.All(mode => wait.Modes[0].Stations.All(mode.Stations.Contains));

    private BenchStage Stage(WorkTask task, Stage stage, Series? series, StageProgress state, Instant? beforeDoneAt)
    {
        var estimate = estimator.Of(stage);
        var bench = new BenchStage
        {
            Name = stage.Name is { } name ? $"{task.Name}: {name}" : task.Name,
            Kind = stage.Kind,
            Minutes = state.Left(estimate.Minutes),
            Modes = modes.Of(task, stage, state.RunningSince is null ? null : state.Station),
            NotBefore = NotBefore(task, series),
            Begun = state.RunningSince is not null,
        };
        return stage.Kind switch
        {
            StageKind.Attended => Attended(bench, stage, state),
            StageKind.Run => Run(bench, stage, estimate, state),
            _ => Wait(bench, estimate, state, beforeDoneAt),
        };
    }

    private BenchStage Attended(BenchStage bench, Stage stage, StageProgress state) => bench with
    {
        Minutes = state.RunningSince is { } since ? Math.Max(1, bench.Minutes - Elapsed(since)) : bench.Minutes,
        MinimumBlock = stage.Unbroken
            ? int.MaxValue
            : stage.MinimumBlockMinutes ?? workshop.Settings.MinimumBlockMinutes ?? Defaults.MinimumBlockMinutes,
        StaysSetUp = stage.StaysSetUp,
    };

    private BenchStage Run(BenchStage bench, Stage stage, StageEstimate estimate, StageProgress state)
    {
        var touch = workshop.Settings.TouchMinutes ?? Defaults.TouchMinutes;
        var minutes = state.RunningSince is { } since
            ? Math.Max(0, bench.Minutes - Math.Max(0, Elapsed(since) - stage.LoadMinutes))
            : bench.Minutes;
        return bench with
        {
            Minutes = minutes,
            FitMinutes = Math.Max(minutes, estimate.FitMinutes - (estimate.Minutes - minutes)),
            LoadMinutes = stage.LoadMinutes,
            UnloadMinutes = stage.UnloadMinutes,
            LoadTakesHands = stage.LoadMinutes > touch,
            UnloadTakesHands = stage.UnloadMinutes > touch,
            LookAt = stage.LookAt.Count > 0 ? HoursCalendar.LookAt(stage.LookAt, axis) : null,
        };
    }

    /// <summary>A wait goes on by itself as soon as the stage before it is done.</summary>
    private BenchStage Wait(BenchStage bench, StageEstimate estimate, StageProgress state, Instant? beforeDoneAt)
    {
        var since = state.RunningSince ?? beforeDoneAt;
        var gone = since is { } start ? Gone(start, estimate.OnBusinessDays) : 0;
        return bench with
        {
            Minutes = Math.Max(0, bench.Minutes - gone),
            WaitHours = estimate.OnBusinessDays ? businessDays.Value : null,
            Begun = since is not null,
        };
    }

    private int Gone(Instant since, bool onBusinessDays)
    {
        var elapsed = Math.Min(Elapsed(since), IntervalCalendar.MaximumMinute);
        return onBusinessDays && elapsed > 0
            ? HoursCalendar.BusinessDays(new TimeAxis(since, axis.Zone, elapsed)).TotalWork
            : elapsed;
    }

    private int Elapsed(Instant since) => Math.Max(0, -axis.MinuteOf(since));

    private int NotBefore(WorkTask task, Series? series)
    {
        var dates = new[] { task.NotBefore, series is { State: SeriesState.Resting } ? series.RestingUntil : null };
        return dates.Max(date => date is { } day ? Math.Max(0, axis.MinuteOf(day)) : 0);
    }
}
