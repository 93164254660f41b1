using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>
/// The earliest starts and finishes that hours, dates and links leave, as if every stage had its stations to itself.
/// Arrays are by stage of the problem, minutes; <see cref="Never"/> where there is none.
/// </summary>
internal sealed class EarliestDates
{
    /// <summary>A date that does not come.</summary>
    public const int Never = int.MaxValue;

    private readonly BenchProblem problem;
    private readonly WorkHours hours;

    public EarliestDates(BenchProblem problem, NeededStages needed, WorkHours hours)
    {
        (this.problem, this.hours) = (problem, hours);
        Starts = new int[problem.Stages.Count];
        Finishes = new int[problem.Stages.Count];
        foreach (var stage in needed.Order)
        {
            Find(stage, needed.Into(stage));
        }
    }

    /// <summary>Earliest starts.</summary>
    public int[] Starts { get; }

    /// <summary>Earliest finishes.</summary>
    public int[] Finishes { get; }

    /// <summary>When a lag is over that begins at a moment.</summary>
    public static long AfterLag(BenchLink link, int moment) =>
        link.LagHours is { } counted ? counted.Finish(moment, link.Lag) ?? Never : (long)moment + link.Lag;

    private void Find(int stage, IEnumerable<BenchLink> links)
    {
        var about = problem.Stages[stage];
        var (start, finish) = (about.Begun ? 0L : about.NotBefore, 0L);
        foreach (var link in links)
        {
            var moment = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? Finishes[link.From] : Starts[link.From];
            var least = moment == Never ? Never : AfterLag(link, moment);
            (start, finish) = link.Kind is LinkKind.After or LinkKind.TogetherStart
                ? (Math.Max(start, least), finish)
                : (start, Math.Max(finish, least));
        }

        (Starts[stage], Finishes[stage]) = start > problem.Horizon ? (Never, Never) : Alone(hours, about, (int)start);
        if (Starts[stage] != Never)
        {
            Finishes[stage] = (int)Math.Max(Finishes[stage], finish);
        }
    }

    /// <summary>Start and finish of a stage that may start at a minute and waits for nothing.</summary>
    public static (int Start, int Finish) Alone(WorkHours hours, BenchStage about, int from) => about.Kind switch
    {
        StageKind.Wait => (from, about.WaitHours is { } counted ? counted.Finish(from, about.Minutes) ?? Never : from + about.Minutes),
        StageKind.Attended when about.Minutes == 0 => (from, from),
        _ => about.Modes.Select(mode => about.Kind == StageKind.Run ? Run(hours, about, mode, from) : Work(hours, mode, about.Minutes, from))
            .Aggregate((Start: Never, Finish: Never), (one, two) => (Math.Min(one.Start, two.Start), Math.Min(one.Finish, two.Finish))),
    };

    private static (int Start, int Finish) Work(WorkHours hours, StageMode mode, int minutes, int from)
    {
        var open = hours.OfWork(mode);
        return (open.NextOpen(from) ?? Never, open.Finish(from, minutes) ?? Never);
    }

    private static (int Start, int Finish) Run(WorkHours hours, BenchStage about, StageMode mode, int from)
    {
        int? start = about.Begun ? 0 : hours.StartsOfRun(about, mode).NextOpen(from);
        var end = start + (about.Begun ? 0 : about.LoadMinutes) + about.Minutes;
        var noticed = end is { } at && about.LookAt is { } looks ? looks.NextOpen(at) : end;
        var unload = noticed is { } seen
            ? about.Modes.Where(other => other.Machine == mode.Machine).Min(other => hours.StartsOfUnload(about, other).NextOpen(seen))
            : null;
        return (start ?? Never, unload + about.UnloadMinutes ?? Never);
    }
}
