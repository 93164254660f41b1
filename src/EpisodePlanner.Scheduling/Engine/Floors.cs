namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// The least starts and finishes that greatest lags ask of stages: where a stage can only come too long after another
/// one, that other one is asked to come later.
/// </summary>
internal sealed class Floors
{
    private const int None = -1;

    private readonly CompiledProblem compiled;
    private readonly int[] start;
    private readonly int[] finish;
    private readonly int[] by;

    public Floors(CompiledProblem compiled)
    {
        this.compiled = compiled;
        start = new int[compiled.StageCount];
        finish = new int[compiled.StageCount];
        by = new int[compiled.StageCount];
        Clear();
    }

    /// <summary>Nothing asked.</summary>
    public void Clear()
    {
        start.AsSpan().Clear();
        finish.AsSpan().Clear();
        by.AsSpan().Fill(None);
    }

    /// <summary>Whether a stage was asked to come later.</summary>
    public bool IsRaised(int stage) => by[stage] != None;

    /// <summary>A link that leads to a stage and for which another one was asked to come later; −1 for none.</summary>
    public int RaisedFor(int stage)
    {
        foreach (var link in compiled.GreatestLags.Binds[stage] ? compiled.Problem.Graph.Incoming(stage) : [])
        {
            if (compiled.GreatestLags.IsAny(link) && by[compiled.GreatestLags.Host(compiled.LinkFrom[link])] == link)
            {
                return link;
            }
        }

        return None;
    }

    /// <summary>Applies what is asked of a stage to its bounds.</summary>
    public void Apply(int stage, ref int earliest, ref int leastFinish)
    {
        earliest = Math.Max(earliest, start[stage]);
        leastFinish = Math.Max(leastFinish, finish[stage]);
    }

    /// <summary>Asks the earlier end of a link to come no sooner than a moment.</summary>
    /// <returns>The stage that is to come later; a glued wait comes later with its work.</returns>
    public int Raise(int link, int moment)
    {
        var (stage, least, ofFinish) = compiled.Host(link, moment);
        ref var floor = ref ofFinish ? ref finish[stage] : ref start[stage];
        if (least > floor)
        {
            floor = least;
            by[stage] = link;
        }

        return stage;
    }

    /// <summary>Lowers what was asked to what the stages that follow ask for where they came to stand; whether anything was.</summary>
    public bool Lower(BenchTimes times)
    {
        var lowered = false;
        for (var stage = 0; stage < by.Length; stage++)
        {
            lowered |= by[stage] != None && Lower(stage, times);
        }

        return lowered;
    }

    private bool Lower(int stage, BenchTimes times)
    {
        var (least, leastFinish) = (0, 0);
        Ask(stage, times, ref least, ref leastFinish);
        if (compiled.GluedNext[stage] is >= 0 and var wait)
        {
            Ask(wait, times, ref least, ref leastFinish);
        }

        var lowered = least < start[stage] || leastFinish < finish[stage];
        (start[stage], finish[stage]) = (Math.Min(start[stage], least), Math.Min(finish[stage], leastFinish));
        return lowered;
    }

    private void Ask(int from, BenchTimes times, ref int least, ref int leastFinish)
    {
        foreach (var link in compiled.Problem.Graph.Outgoing(from))
        {
            var to = compiled.LinkTo[link];
            if (!compiled.GreatestLags.IsAny(link) || times.Finishes[to] == None)
            {
                continue;
            }

            var arrives = compiled.Arrives(link, times.Starts[to], times.Finishes[to]);
            var (_, moment, ofFinish) = compiled.Host(link, compiled.GreatestLags.Earliest(link, arrives));
            ref var held = ref ofFinish ? ref leastFinish : ref least;
            held = Math.Max(held, moment);
        }
    }

    /// <summary>The link for whose sake, link by link, a raised stage was asked to come later.</summary>
    public int Origin(int stage)
    {
        var link = by[stage];
        while (by[compiled.LinkTo[link]] != None)
        {
            link = by[compiled.LinkTo[link]];
        }

        return link;
    }
}
