namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// Early dates found minute by minute from the words of the problem, with unlimited stations: of all starts the one that
/// finishes first, and of these the first. Where a stage comes too long after another one, that one is asked to come later
/// and all is done once more. Slow, and too simple to hide a fault.
/// </summary>
internal sealed class MinutePass
{
    private readonly BenchProblem problem;
    private readonly int length;
    private readonly Dictionary<IntervalCalendar, MinuteHours> known = [];
    private readonly int[] leastStart;
    private readonly int[] leastFinish;

    /// <param name="problem">The problem.</param>
    /// <param name="leftOut">Stages that are never done.</param>
    public MinutePass(BenchProblem problem, IReadOnlyCollection<int> leftOut)
    {
        this.problem = problem;
        length = problem.Horizon;
        Starts = [.. Enumerable.Repeat(-1, problem.Stages.Count)];
        (Finishes, leastStart, leastFinish) = ([.. Starts], new int[Starts.Length], new int[Starts.Length]);
        do
        {
            foreach (var stage in Order())
            {
                (Starts[stage], Finishes[stage]) = (leftOut.Contains(stage) ? null : Earliest(stage)) ?? (-1, -1);
            }
        }
        while (AskForMore());
    }

    public int[] Starts { get; }

    public int[] Finishes { get; }

    private (int Start, int Finish)? Earliest(int stage)
    {
        var spec = problem.Stages[stage];
        if (Bounds(stage) is not var (earliest, least))
        {
            return null;
        }

        var last = spec.Begun && spec.Kind == StageKind.Run ? 0 : length;
        var glued = problem.Stages.FirstOrDefault(wait => wait.GluedTo == stage);
        var placements =
            from mode in spec.Modes
            let finish = FinishOf(spec, mode)
            from start in Enumerable.Range(earliest, Math.Max(0, last - earliest + 1))
            let end = finish(start)
            where end >= least && end <= length && (glued is null || GluedFits(glued, end.Value))
            select (start, end.Value);
        return placements.OrderBy(p => Lags(stage).Select(lag => Beyond(lag, p.start, p.Value)).Append(0).Max())
            .ThenBy(p => p.Value).ThenBy(p => p.start).Cast<(int, int)?>().FirstOrDefault();
    }

    private bool GluedFits(BenchStage wait, int start)
    {
        var index = problem.Stages.ToList().IndexOf(wait);
        return WaitEnd(wait, start) is { } end && end <= length && start >= leastStart[index] && end >= leastFinish[index];
    }

    /// <summary>The greatest lags into a stage from those that can still come later.</summary>
    private IEnumerable<BenchLink> Lags(int stage) => problem.Links.Where(l => l.To == stage && l.AtMost is not null
        && !problem.Stages[stage].Begun && !problem.Stages[l.From].Begun
        && !(problem.Stages[l.From].GluedTo is >= 0 and var host && problem.Stages[host].Begun));

    private int Beyond(BenchLink lag, int start, int finish) => (lag.Kind is LinkKind.After or LinkKind.TogetherStart ? start : finish)
        - (lag.Kind is LinkKind.After or LinkKind.TogetherFinish ? Finishes[lag.From] : Starts[lag.From]) - lag.AtMost!.Value;

    private bool AskForMore()
    {
        var asked = false;
        foreach (var stage in Enumerable.Range(0, Starts.Length).Where(stage => Starts[stage] >= 0))
        {
            foreach (var lag in Lags(stage).Where(lag => Beyond(lag, Starts[stage], Finishes[stage]) > 0))
            {
                var ofFinish = lag.Kind is LinkKind.After or LinkKind.TogetherFinish;
                var (floors, now) = ofFinish ? (leastFinish, Finishes[lag.From]) : (leastStart, Starts[lag.From]);
                floors[lag.From] = now + Beyond(lag, Starts[stage], Finishes[stage]);
                asked = true;
            }
        }

        return asked;
    }

    private (int Earliest, int LeastFinish)? Bounds(int stage)
    {
        var spec = problem.Stages[stage];
        var (earliest, least) = (Math.Max(leastStart[stage], spec.Begun ? 0 : spec.NotBefore), leastFinish[stage]);
        foreach (var link in problem.Links.Where(l => l.To == stage && !spec.Begun))
        {
            var leaves = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? Finishes[link.From] : Starts[link.From];
            var bound = leaves < 0 ? null : link.LagHours is { } hours ? Of(hours).After(leaves, link.Lag) : leaves + link.Lag;
            if (bound is not { } date)
            {
                return null;
            }

            ref var held = ref link.Kind is LinkKind.After or LinkKind.TogetherStart ? ref earliest : ref least;
            held = Math.Max(held, date);
        }

        return (earliest, least);
    }

    /// <summary>When a stage that starts at just this minute is finished; null where it can't.</summary>
    private Func<int, int?> FinishOf(BenchStage spec, StageMode mode)
    {
        if (spec.Kind == StageKind.Wait)
        {
            return start => WaitEnd(spec, start);
        }

        if (spec.Kind == StageKind.Run)
        {
            return start => new MinuteRun(spec, mode, problem, Of).Finish(start);
        }

        var hours = spec.Minutes == 0 ? null : AtWork(mode, spec is { Begun: true, Modes.Count: 1 });
        return start => hours is null ? start : hours.Finish(start, spec.Minutes, spec.MinimumBlock);
    }

    private int? WaitEnd(BenchStage wait, int start) =>
        wait.WaitHours is { } hours ? Of(hours).After(start, wait.Minutes) : start + wait.Minutes;

    /// <summary>When all is open for attended work; at a place people set up before it and tidy after it.</summary>
    private MinuteHours AtWork(StageMode mode, bool isSetUp)
    {
        var place = mode.Stations.Select(s => problem.Stations[s]).FirstOrDefault(s => s.Kind == StationKind.Place);
        var people = mode.Stations.Select(s => problem.Stations[s]).Where(s => s.Kind == StationKind.Person).ToList();
        var sitting = people.Select(s => Of(s.Hours))
            .Aggregate(place is null ? MinuteHours.Always(length) : Of(place.Hours), (a, b) => a.And(b));
        if (place is not null && people.Count > 0)
        {
            sitting = sitting.Trimmed(isSetUp, place.SetUpMinutes, place.TidyMinutes);
        }

        return mode.Stations.Select(s => Of(problem.Stations[s].Hours)).Concat(mode.Limits.Select(l => Of(problem.Limits[l].Open)))
            .Aggregate(sitting, (a, b) => a.And(b));
    }

    private IEnumerable<int> Order()
    {
        var done = new HashSet<int>();
        while (done.Count < problem.Stages.Count)
        {
            var next = Enumerable.Range(0, problem.Stages.Count)
                .First(i => !done.Contains(i) && problem.Links.All(l => l.To != i || done.Contains(l.From)));
            done.Add(next);
            yield return next;
        }
    }

    private MinuteHours Of(IntervalCalendar calendar)
    {
        if (!known.TryGetValue(calendar, out var hours))
        {
            known.Add(calendar, hours = MinuteHours.Of(calendar, length));
        }

        return hours;
    }
}
