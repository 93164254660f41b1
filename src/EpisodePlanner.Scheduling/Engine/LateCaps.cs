namespace EpisodePlanner.Scheduling.Engine;

/// <summary>The latest starts and finishes that greatest lags leave to stages, given those of the stages that these follow.</summary>
internal sealed class LateCaps(CompiledProblem compiled, int[] latestFinish)
{
    /// <summary>More passes than this change little and would only make a far float a little shorter.</summary>
    private const int MostPasses = 50;

    private readonly int[] start = Unbounded(compiled.StageCount);
    private readonly int[] finish = (int[])latestFinish.Clone();
    private int passes;

    public int Start(int stage) => start[stage];

    public int Finish(int stage) => finish[stage];

    /// <summary>Lowers what comes too late after another stage's latest date; whether anything does.</summary>
    public bool Lower(int[] starts, int[] finishes)
    {
        var lowered = false;
        for (var link = 0; link < compiled.LinkTo.Length && compiled.GreatestLags.Count > 0 && passes < MostPasses; link++)
        {
            lowered |= compiled.GreatestLags.IsAny(link) && Lower(link, starts, finishes);
        }

        passes++;
        return lowered;
    }

    private bool Lower(int link, int[] starts, int[] finishes)
    {
        var (from, to) = (compiled.LinkFrom[link], compiled.LinkTo[link]);
        if (starts[from] < 0 || starts[to] < 0)
        {
            return false;
        }

        var latest = compiled.GreatestLags.Latest(link, Leaves(link, starts, finishes));
        ref var cap = ref compiled.HoldsStart(link) ? ref start[to] : ref finish[to];
        if (compiled.Arrives(link, starts[to], finishes[to]) <= latest || cap <= latest)
        {
            return false;
        }

        cap = latest;
        return true;
    }

    /// <summary>The latest moment of the earlier end; a glued wait comes no later than its work lets it.</summary>
    private int Leaves(int link, int[] starts, int[] finishes)
    {
        var from = compiled.LinkFrom[link];
        var host = compiled.GreatestLags.Host(from);
        if (host == from)
        {
            return compiled.LeavesFinish(link) ? finishes[from] : starts[from];
        }

        return compiled.LeavesFinish(link) ? Math.Max(finishes[host], compiled.WaitEnd(from, finishes[host])) : finishes[host];
    }

    private static int[] Unbounded(int count)
    {
        var caps = new int[count];
        caps.AsSpan().Fill(int.MaxValue);
        return caps;
    }
}
