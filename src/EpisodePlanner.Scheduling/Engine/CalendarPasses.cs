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
        var early = new EarlyDates(compiled, state, placer);
        (EarlyStart, EarlyFinish, Unkept) = (early.Start, early.Finish, early.Unkept);
    }

    public CompiledProblem Compiled => compiled;

    public int[] EarlyStart { get; }

    public int[] EarlyFinish { get; }

    /// <summary>By stage: the link whose greatest lag no moment keeps; −1 for none.</summary>
    public int[] Unkept { get; }

    /// <summary>The latest starts and finishes that keep every stage's own limit and all links.</summary>
    /// <param name="latestFinish">By stage: when it must be finished.</param>
    public (int[] Start, int[] Finish) Late(int[] latestFinish)
    {
        var (starts, finishes) = (new int[compiled.StageCount], new int[compiled.StageCount]);
        var caps = new LateCaps(compiled, latestFinish);
        do
        {
            foreach (var stage in compiled.Problem.Graph.Order.Reverse())
            {
                (starts[stage], finishes[stage]) = EarlyStart[stage] == Never ? (Never, Never) : Latest(stage, caps, starts, finishes);
            }
        }
        while (caps.Lower(starts, finishes));

        return (starts, finishes);
    }

    private (int Start, int Finish) Latest(int stage, LateCaps caps, int[] starts, int[] finishes)
    {
        var (startBound, finishBound) = (caps.Start(stage), caps.Finish(stage));
        foreach (var link in compiled.Problem.Graph.Outgoing(stage))
        {
            Tighten(link, starts, finishes, ref startBound, ref finishBound);
        }

        return latest.Find(stage, EarlyStart[stage], EarlyFinish[stage], startBound, finishBound);
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

            slack = slack == int.MaxValue ? end - EarlyFinish[stage] : slack;
            floats[stage] = Math.Min(slack, SlackToGreatestLags(stage));
        }

        return floats;
    }

    /// <summary>Which stages lead to the end by links that decide an early date.</summary>
    public bool[] Critical(int end)
    {
        var critical = new bool[compiled.StageCount];
        for (var goesOn = true; goesOn;)
        {
            goesOn = false;
            foreach (var stage in compiled.Problem.Graph.Order.Reverse())
            {
                critical[stage] |= EarlyFinish[stage] == end && EarlyStart[stage] != Never;
                goesOn |= critical[stage] && MarkWhatDecides(stage, critical);
            }
        }

        return critical;
    }

    /// <summary>Whether what decides a stage's dates was found among those that come after it, so that these are traced too.</summary>
    private bool MarkWhatDecides(int stage, bool[] critical)
    {
        foreach (var link in compiled.Begun[stage] ? [] : compiled.Problem.Graph.Incoming(stage))
        {
            critical[compiled.LinkFrom[link]] |= IsDriving(link);
        }

        var isNew = false;
        foreach (var link in compiled.GreatestLags.Count > 0 ? compiled.Problem.Graph.Outgoing(stage) : [])
        {
            if (!critical[compiled.LinkTo[link]] && MovesLater(link))
            {
                critical[compiled.LinkTo[link]] = isNew = true;
            }
        }

        return isNew;
    }

    /// <summary>Whether a greatest lag decides the date of the stage it leaves from.</summary>
    private bool MovesLater(int link)
    {
        var to = compiled.LinkTo[link];
        return compiled.GreatestLags.IsAny(link) && EarlyStart[to] != Never
            && SlackToGreatestLag(link, to) == 0 && !compiled.Problem.Graph.Incoming(compiled.LinkFrom[link]).ToArray().Any(IsDriving);
    }

    private int SlackToGreatestLags(int stage)
    {
        var slack = int.MaxValue;
        foreach (var link in EarlyStart[stage] != Never && compiled.GreatestLags.Binds[stage] ? compiled.Problem.Graph.Incoming(stage) : [])
        {
            slack = compiled.GreatestLags.IsAny(link) ? Math.Min(slack, SlackToGreatestLag(link, stage)) : slack;
        }

        return slack;
    }

    private int SlackToGreatestLag(int link, int to)
    {
        var from = compiled.LinkFrom[link];
        var leaves = compiled.LeavesFinish(link) ? EarlyFinish[from] : EarlyStart[from];
        return compiled.GreatestLags.Latest(link, leaves) - compiled.Arrives(link, EarlyStart[to], EarlyFinish[to]);
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
