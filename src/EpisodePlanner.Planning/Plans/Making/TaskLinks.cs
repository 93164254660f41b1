using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// Turns the links of tasks into links of stages. Start links leave from the first stage's start and hold the first
/// stage; finish links leave from the last stage's finish and hold the last. What a finished end still asks for
/// becomes a date.
/// </summary>
internal sealed class TaskLinks(
    Workshop workshop, TimeAxis axis, WorkProgress progress, StationTable table, BenchDraft draft)
{
    private readonly PastHours past = new(workshop, axis);
    private readonly List<PassedLag> passed = [];

    /// <summary>Greatest lags after what is done or begun: there is nothing to move any more, so they are only told.</summary>
    public IReadOnlyList<PassedLag> Passed => passed;

    public void AddTo(WorkTask task)
    {
        foreach (var link in task.Links.OrderBy(l => l.Task).ThenBy(l => l.Kind).ThenBy(l => l.LagMinutes))
        {
            Add(task, link);
        }
    }

    /// <summary>A link from the end of a whole task to a stage: everything the task still has must be done.</summary>
    public void AddFinish(WorkTask from, int to)
    {
        if (Last(from) is { } last)
        {
            draft.Add(new BenchLink(last, to, LinkKind.After));
        }
    }

    /// <summary>A link from a stage to the start of what is left of a task.</summary>
    public void AddStart(int from, WorkTask to)
    {
        if (First(to) is { } first)
        {
            draft.Add(new BenchLink(from, first, LinkKind.After));
        }
    }

    /// <summary>Links that make a stage come after the tasks that a task follows; of their lags only how early it may come.</summary>
    public void AddWaitsOf(WorkTask task, int to)
    {
        foreach (var link in task.Links.Where(link => link.Kind == LinkKind.After).OrderBy(link => link.Task).ThenBy(link => link.LagMinutes))
        {
            if (workshop.Tasks.Find(link.Task) is { } from && Last(from) is { } last)
            {
                draft.Add(new BenchLink(last, to, LinkKind.After) { Lag = Math.Min(0, link.LagMinutes) });
            }
        }
    }

    /// <summary>Whether a stage follows a task already, so that it can't come before it as well.</summary>
    public bool WouldCircle(int stage, WorkTask before) => First(before) is { } first && draft.Leads(first, stage);

    private void Add(WorkTask task, TaskLink link)
    {
        if (workshop.Tasks.Find(link.Task) is not { } from || Held(task, link.Kind) is not { } to)
        {
            return;
        }

        var leaving = LeavesFinish(link.Kind) ? Last(from) : First(from);
        if (leaving is { } stage && (LeavesFinish(link.Kind) || !StartHasPassed(from)))
        {
            draft.Add(new BenchLink(stage, to, link.Kind)
            {
                Lag = link.LagMinutes,
                LagHours = link.LagClock == LagClock.Working ? LagHours(link) : null,
                AtMost = link.AtMostMinutes,
            });
        }
        else if (PassedAt(from, link.Kind) is { } moment)
        {
            HoldByDate(to, link, moment);
            if (link.AtMostMinutes is { } most)
            {
                passed.Add(new PassedLag(from.Name, to, link.Kind, most, axis.MinuteOf(moment)));
            }
        }
    }

    /// <summary>The stage of the waiting task that the link holds; null where that end has passed.</summary>
    private int? Held(WorkTask task, LinkKind kind)
    {
        var holdsStart = kind is LinkKind.After or LinkKind.TogetherStart;
        return holdsStart && StartHasPassed(task) ? null : holdsStart ? First(task) : Last(task);
    }

    private void HoldByDate(int to, TaskLink link, Instant passed)
    {
        if (link.Kind is LinkKind.After or LinkKind.TogetherStart && PassesAt(link, passed) is > 0 and var bound)
        {
            draft.Replace(to, stage => stage with { NotBefore = Math.Max(stage.NotBefore, bound) });
        }
    }

    /// <summary>When a lag that began at a moment in the past is over; a working one may never be.</summary>
    private int PassesAt(TaskLink link, Instant passed)
    {
        if (link.LagClock != LagClock.Working)
        {
            return axis.MinuteOf(passed) + link.LagMinutes;
        }

        var left = link.LagMinutes - past.OpenSince(passed, link.LagStation);
        return left <= 0 ? 0 : LagHours(link).Finish(0, left) ?? axis.Horizon;
    }

    private IntervalCalendar LagHours(TaskLink link) =>
        link.LagStation is { } station ? table.Stations[table.IndexOf(station)].Hours : table.Presence;

    private static bool LeavesFinish(LinkKind kind) => kind is LinkKind.After or LinkKind.TogetherFinish;

    private bool StartHasPassed(WorkTask task) =>
        task.Stages.Count > 0 && progress.Of(StageKey.OfTask(task.Id, task.Stages[0].Id)).IsStarted;

    private Instant? PassedAt(WorkTask task, LinkKind kind)
    {
        var states = task.Stages.Select(stage => progress.Of(StageKey.OfTask(task.Id, stage.Id)));
        return LeavesFinish(kind) ? states.Max(s => s.DoneAt) : states.Min(s => s.StartedAt);
    }

    private int? First(WorkTask task) => draft.EndsOf(task.Id)?.First;

    private int? Last(WorkTask task) => draft.EndsOf(task.Id)?.Last;
}

/// <summary>A greatest lag after something that can't come later any more.</summary>
/// <param name="First">The name of what is done or begun.</param>
/// <param name="To">The stage that must follow it.</param>
/// <param name="Kind">Which ends are linked.</param>
/// <param name="AtMost">The greatest lag, minutes.</param>
/// <param name="Leaves">The moment from which it counts, minutes from planning.</param>
internal sealed record PassedLag(string First, int To, LinkKind Kind, int AtMost, int Leaves);
