namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Forward and backward passes over a problem's links and hours, with unlimited stations.</summary>
internal sealed class CalendarPasses
{
    private const int Never = -1;

    private readonly CompiledProblem compiled;
    private readonly StagePlacer placer;
    private readonly LatestStarts latest;
    private readonly List<SchedulePart> parts = [];

    public CalendarPasses(CompiledProblem compiled)
    {
        this.compiled = compiled;
        var state = new BenchState(compiled);
        placer = new StagePlacer(state);
        latest = new LatestStarts(compiled, placer);
        EarlyStart = new int[compiled.StageCount];
        EarlyFinish = new int[compiled.StageCount];
        Place(isBegun: true);

        // Where people are set up now binds their work that is going on; other work may have people of its own.
        state.Clear();
        Place(isBegun: false);
    }

    public CompiledProblem Compiled => compiled;

    public int[] EarlyStart { get; }

    public int[] EarlyFinish { get; }

    /// <summary>The latest starts and finishes that keep every stage's own limit and all links.</summary>
    /// <param name="latestFinish">By stage: when it must be finished.</param>
    public (int[] Start, int[] Finish) Late(int[] latestFinish)
    {
        var (starts, finishes) = (new int[compiled.StageCount], new int[compiled.StageCount]);
        foreach (var stage in compiled.Problem.Graph.Order.Reverse())
        {
            if (EarlyStart[stage] == Never)
            {
                (starts[stage], finishes[stage]) = (Never, Never);
                continue;
            }

            var (startBound, finishBound) = (int.MaxValue, latestFinish[stage]);
            foreach (var link in compiled.Problem.Graph.Outgoing(stage))
            {
                Tighten(link, starts, finishes, ref startBound, ref finishBound);
            }

            (starts[stage], finishes[stage]) =
                latest.Find(stage, EarlyStart[stage], EarlyFinish[stage], startBound, finishBound);
        }

        return (starts, finishes);
    }

    /// <summary>How much later each finish may be without moving any early date or the end.</summary>
    public int[] FreeFloat(int end)
    {
        var floats = new int[compiled.StageCount];
        for (var stage = 0; stage < floats.Length; stage++)
        {
            var slack = EarlyStart[stage] == Never ? 0 : int.MaxValue;
            foreach (var link in compiled.Problem.Graph.Outgoing(stage))
            {
                slack = Math.Min(slack, Slack(link));
            }

            floats[stage] = slack == int.MaxValue ? end - EarlyFinish[stage] : slack;
        }

        return floats;
    }

    /// <summary>Which stages lead to the end by links that decide an early date.</summary>
    public bool[] Critical(int end)
    {
        var critical = new bool[compiled.StageCount];
        foreach (var stage in compiled.Problem.Graph.Order.Reverse())
        {
            critical[stage] |= EarlyFinish[stage] == end && EarlyStart[stage] != Never;
            if (!critical[stage] || compiled.Begun[stage])
            {
                continue;
            }

            foreach (var link in compiled.Problem.Graph.Incoming(stage))
            {
                critical[compiled.LinkFrom[link]] |= IsDriving(link);
            }
        }

        return critical;
    }

    private void Place(bool isBegun)
    {
        foreach (var stage in compiled.Problem.Graph.Order)
        {
            if (compiled.Begun[stage] == isBegun)
            {
                (EarlyStart[stage], EarlyFinish[stage]) = Earliest(stage);
            }
        }
    }

    private (int Start, int Finish) Earliest(int stage)
    {
        if (!compiled.TryBounds(stage, EarlyStart, EarlyFinish, out var earliest, out var leastFinish))
        {
            return (Never, Never);
        }

        var (start, finish) = (Never, int.MaxValue);
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, earliest, leastFinish, parts)
                && (parts[^1].End, parts[0].Start).CompareTo((finish, start)) < 0)
            {
                (start, finish) = (parts[0].Start, parts[^1].End);
            }
        }

        return start == Never ? (Never, Never) : (start, finish);
    }

    private bool IsDriving(int link)
    {
        var to = compiled.LinkTo[link];
        compiled.TryBounds(to, EarlyStart, EarlyFinish, out var earliest, out var leastFinish);
        var bound = compiled.Bound(link, EarlyStart, EarlyFinish);
        if (bound == 0 && AllowsLessThanNow(link))
        {
            return false;
        }

        return compiled.HoldsStart(link)
            ? bound == earliest && StartIsHeld(to, earliest)
            : bound == leastFinish && leastFinish >= EarlyFinish[to];
    }

    /// <summary>Whether a link asks for a date before minute 0, so that it decides nothing.</summary>
    private bool AllowsLessThanNow(int link)
    {
        var from = compiled.LinkFrom[link];
        return (compiled.LeavesFinish(link) ? EarlyFinish[from] : EarlyStart[from]) + compiled.Lags[link] < 0;
    }

    /// <summary>Whether the least start, not the least finish, decides when a stage starts.</summary>
    private bool StartIsHeld(int stage, int earliest)
    {
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, earliest, parts) && parts[^1].End <= EarlyFinish[stage])
            {
                return parts[0].Start == EarlyStart[stage];
            }
        }

        return false;
    }

    private int Slack(int link)
    {
        var to = compiled.LinkTo[link];
        if (EarlyStart[to] == Never || EarlyStart[compiled.LinkFrom[link]] == Never)
        {
            return int.MaxValue;
        }

        var date = compiled.HoldsStart(link) ? EarlyStart[to] : EarlyFinish[to];
        var from = compiled.LinkFrom[link];
        return Math.Max(0, compiled.WithoutLag(link, date) - (compiled.LeavesFinish(link) ? EarlyFinish[from] : EarlyStart[from]));
    }

    private void Tighten(int link, int[] starts, int[] finishes, ref int startBound, ref int finishBound)
    {
        var to = compiled.LinkTo[link];
        if (starts[to] == Never || compiled.Begun[to])
        {
            return;
        }

        var bound = compiled.WithoutLag(link, compiled.HoldsStart(link) ? starts[to] : finishes[to]);
        ref var held = ref compiled.LeavesFinish(link) ? ref finishBound : ref startBound;
        held = Math.Min(held, bound);
    }
}
