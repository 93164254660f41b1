namespace EpisodePlanner.Scheduling.Engine;

/// <summary>A problem in columns by stage and by link, for decoding many schedules.</summary>
internal sealed class CompiledProblem
{
    public CompiledProblem(BenchProblem problem)
    {
        Problem = problem;
        var stages = problem.Stages;
        Kinds = [.. stages.Select(s => s.Kind)];
        Minutes = [.. stages.Select(s => s.Minutes)];
        Begun = [.. stages.Select(s => s.Begun)];
        NotBefore = [.. stages.Select(s => s.NotBefore)];
        MinimumBlock = [.. stages.Select(s => Math.Max(1, s.MinimumBlock))];
        StaysSetUp = [.. stages.Select(s => s.Kind == StageKind.Attended && s.StaysSetUp)];
        Modes = InternedModes(problem);
        LinkFrom = [.. problem.Links.Select(l => l.From)];
        LinkTo = [.. problem.Links.Select(l => l.To)];
        LinkKinds = [.. problem.Links.Select(l => l.Kind)];
        Lags = [.. problem.Links.Select(l => l.Lag)];
        LagHours = [.. problem.Links.Select(l => l.LagHours)];
        TidyByMark = [0, .. problem.Stations.Select(s => s.TidyMinutes)];
        SetUpByMark = [0, .. problem.Stations.Select(s => s.SetUpMinutes)];
        GreatestLags = new GreatestLags(problem);
        StageOfUnload = [.. Enumerable.Range(0, stages.Count).Where(i => Kinds[i] == StageKind.Run && stages[i].UnloadTakesHands && stages[i].UnloadMinutes > 0)];
        UnloadItem = [.. Enumerable.Repeat(-1, stages.Count)];
        for (var unload = 0; unload < StageOfUnload.Length; unload++)
        {
            UnloadItem[StageOfUnload[unload]] = stages.Count + unload;
        }

        HasSittings = problem.Stations.Any(s => s.SetUpMinutes + s.TidyMinutes > 0);
        SittingAtStart = HasSittings ? [.. Sitting()] : [];
        WaitingFor = new int[stages.Count];
        GluedNext = [.. Enumerable.Repeat(-1, stages.Count)];
        for (var i = 0; i < stages.Count; i++)
        {
            WaitingFor[i] = Begun[i] ? 0 : problem.Graph.Incoming(i).Length;
            if (stages[i].GluedTo >= 0)
            {
                GluedNext[stages[i].GluedTo] = i;
            }
        }
    }

    public BenchProblem Problem { get; }

    public int StageCount => Kinds.Length;

    /// <summary>How many items a list has: every stage, then every unload that takes hands.</summary>
    public int ItemCount => StageCount + StageOfUnload.Length;

    /// <summary>The runs whose unloads are items of their own.</summary>
    public int[] StageOfUnload { get; }

    /// <summary>By stage: the item of its unload; −1 for none.</summary>
    public int[] UnloadItem { get; }

    public StageKind[] Kinds { get; }

    public int[] Minutes { get; }

    public bool[] Begun { get; }

    public int[] NotBefore { get; }

    /// <summary>At least 1.</summary>
    public int[] MinimumBlock { get; }

    /// <summary>Only attended stages.</summary>
    public bool[] StaysSetUp { get; }

    /// <summary>By stage; stages that need the same share their modes, which keeps them near each other in memory.</summary>
    public CompiledMode[][] Modes { get; }

    public int[] LinkFrom { get; }

    public int[] LinkTo { get; }

    public LinkKind[] LinkKinds { get; }

    public int[] Lags { get; }

    public IntervalCalendar?[] LagHours { get; }

    public GreatestLags GreatestLags { get; }

    /// <summary>By the mark of <see cref="FreeTime"/>: minutes of tidying at a place.</summary>
    public int[] TidyByMark { get; }

    /// <summary>By the mark of <see cref="FreeTime"/>: minutes of setting up at a place.</summary>
    public int[] SetUpByMark { get; }

    /// <summary>People whose work is going on at minute 0, with the mark of its place.</summary>
    public (int Person, int PlaceMark)[] SittingAtStart { get; }

    /// <summary>Whether setting up or tidying takes time anywhere.</summary>
    public bool HasSittings { get; }

    /// <summary>How many links a stage waits for; none where it has begun.</summary>
    public int[] WaitingFor { get; }

    /// <summary>The wait that follows a stage without a gap; −1 for none.</summary>
    public int[] GluedNext { get; }

    private static CompiledMode[][] InternedModes(BenchProblem problem)
    {
        var known = new Dictionary<string, CompiledMode>();
        var lists = new Dictionary<string, CompiledMode[]>();
        var result = new CompiledMode[problem.Stages.Count][];
        for (var stage = 0; stage < result.Length; stage++)
        {
            var keys = problem.Stages[stage].Modes.Select(CompiledMode.Key).ToArray();
            var key = string.Join(';', keys);
            if (!lists.TryGetValue(key, out result[stage]!))
            {
                result[stage] = [.. problem.Stages[stage].Modes.Select((mode, i) => Interned(problem, known, keys[i], mode))];
                lists.Add(key, result[stage]);
            }
        }

        return result;
    }

    private static CompiledMode Interned(BenchProblem problem, Dictionary<string, CompiledMode> known, string key, StageMode mode)
    {
        if (!known.TryGetValue(key, out var compiled))
        {
            compiled = new CompiledMode(problem, mode);
            known.Add(key, compiled);
        }

        return compiled;
    }

    private IEnumerable<(int Person, int PlaceMark)> Sitting() =>
        Enumerable.Range(0, StageCount)
            .Where(stage => Begun[stage] && Kinds[stage] == StageKind.Attended && Modes[stage].Length == 1)
            .SelectMany(stage => Modes[stage][0].Persons, (stage, person) => (person, Modes[stage][0].PlaceMark));

    /// <summary>Whether a link leaves from the finish of the stage waited for, not from its start.</summary>
    public bool LeavesFinish(int link) => LinkKinds[link] is LinkKind.After or LinkKind.TogetherFinish;

    /// <summary>Whether a link holds the start of the stage that waits, not its finish.</summary>
    public bool HoldsStart(int link) => LinkKinds[link] is LinkKind.After or LinkKind.TogetherStart;

    /// <summary>The latest moment from which a link's lag ends by a moment.</summary>
    public int WithoutLag(int link, int moment) =>
        LagHours[link] is { } hours ? hours.LatestStart(moment, Lags[link]) ?? 0 : moment - Lags[link];

    /// <summary>When a wait that begins at a minute is over; −1 where its hours end before.</summary>
    public int WaitEnd(int stage, int start)
    {
        var wait = Problem.Stages[stage];
        return wait.WaitHours is { } hours ? hours.Finish(start, wait.Minutes) ?? -1 : start + wait.Minutes;
    }

    /// <summary>What must come later, and by which moment, for the earlier end of a link to come no sooner than a moment.</summary>
    /// <returns>The stage, or the work that it is glued to; the least moment; whether that is one of its finish.</returns>
    public (int Stage, int Least, bool OfFinish) Host(int link, int moment)
    {
        var (stage, ofFinish) = (LinkFrom[link], LeavesFinish(link));
        var host = GreatestLags.Host(stage);
        return host == stage ? (stage, moment, ofFinish) : (host, ofFinish ? FirstStartEnding(stage, moment) : moment, true);
    }

    /// <summary>The first start from which a wait lasts until a moment.</summary>
    private int FirstStartEnding(int wait, int moment)
    {
        var (from, to) = (0, Math.Max(0, moment));
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            var isEarly = WaitEnd(wait, middle) is >= 0 and var end && end < moment;
            (from, to) = isEarly ? (middle + 1, to) : (from, middle);
        }

        return to;
    }

    /// <summary>The earliest start and the least finish that links and dates ask of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="starts">When the stages it waits for start; −1 for never.</param>
    /// <param name="finishes">When they are finished.</param>
    /// <param name="earliest">It may not start before.</param>
    /// <param name="leastFinish">It may not be finished before.</param>
    /// <returns>False where these lie beyond the horizon or a stage waited for never happens.</returns>
    public bool TryBounds(
        int stage, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, out int earliest, out int leastFinish)
    {
        earliest = Begun[stage] ? 0 : NotBefore[stage];
        leastFinish = 0;
        if (Begun[stage])
        {
            return true;
        }

        foreach (var link in Problem.Graph.Incoming(stage))
        {
            var bound = Bound(link, starts, finishes);
            if (bound < 0)
            {
                return false;
            }

            ref var held = ref HoldsStart(link) ? ref earliest : ref leastFinish;
            held = Math.Max(held, bound);
        }

        return Math.Max(earliest, leastFinish) <= Problem.Horizon;
    }

    /// <summary>The date that a link asks of its later end; −1 for never.</summary>
    public int Bound(int link, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes)
    {
        var leaves = LeavesFinish(link) ? finishes[LinkFrom[link]] : starts[LinkFrom[link]];
        return leaves < 0 ? leaves : WithLag(link, leaves);
    }

    /// <summary>A moment with a link's lag added; −1 where the lag's hours end before.</summary>
    public int WithLag(int link, int moment)
    {
        if (LagHours[link] is { } hours)
        {
            return hours.Finish(moment, Lags[link]) ?? -1;
        }

        return Math.Max(0, moment + Lags[link]);
    }

    /// <summary>By how many minutes a placement comes too late for the greatest lags that lead to its stage; 0 where it does not.</summary>
    public int Excess(int stage, int start, int finish, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes)
    {
        var most = 0;
        if (GreatestLags.Binds[stage])
        {
            foreach (var link in Problem.Graph.Incoming(stage))
            {
                most = Math.Max(most, ExcessOf(link, start, finish, starts, finishes));
            }
        }

        return most;
    }

    /// <summary>The same for one link; 0 where it has no greatest lag.</summary>
    public int ExcessOf(int link, int start, int finish, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes)
    {
        if (!GreatestLags.IsAny(link))
        {
            return 0;
        }

        var leaves = LeavesFinish(link) ? finishes[LinkFrom[link]] : starts[LinkFrom[link]];
        return Math.Max(0, Arrives(link, start, finish) - GreatestLags.Latest(link, leaves));
    }

    /// <summary>The end that a link holds.</summary>
    public int Arrives(int link, int start, int finish) => HoldsStart(link) ? start : finish;
}
