namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Keeps greatest lags while a list is decoded. Where a stage could only be placed too long after another one, that other
/// one is asked to come later and the list is decoded once more, a bounded number of times. Mostly it is known before:
/// where nothing else is missing, what should follow soon is tried right when a stage is placed.
/// </summary>
internal sealed class LagKeeper
{
    /// <summary>A link may ask so often within one list, then what it leads to is left out.</summary>
    private const int MostRaises = 12;

    /// <summary>So often what was asked is lowered again, where a stage came to stand sooner than it was seen before.</summary>
    private const int MostLowerings = 3;

    /// <summary>Any list is decoded so often at most.</summary>
    private const int MostRestarts = 200;
    private const int MostProbes = 10_000;

    private readonly CompiledProblem compiled;
    private readonly LagProbe probe;
    private readonly Floors floors;
    private readonly bool[] neverKept;
    private readonly bool[] givenUp;
    private readonly int[] raises;
    private int restarts;
    private int lowerings;

    /// <param name="compiled">The problem.</param>
    /// <param name="placer">Places stages beside what is taken.</param>
    /// <param name="unkept">By stage: the link that no schedule can keep, −1 for none; such a stage stays unplaced.</param>
    public LagKeeper(CompiledProblem compiled, StagePlacer placer, ReadOnlySpan<int> unkept)
    {
        this.compiled = compiled;
        probe = new LagProbe(compiled, placer);
        floors = new Floors(compiled);
        neverKept = new bool[compiled.StageCount];
        for (var stage = 0; stage < neverKept.Length; stage++)
        {
            neverKept[stage] = unkept[stage] >= 0;
        }

        givenUp = new bool[compiled.StageCount];
        raises = new int[compiled.LinkTo.Length];
    }

    /// <summary>Whether the list must be decoded once more.</summary>
    public bool MustRestart { get; private set; }

    /// <summary>A new list: nothing is asked of any stage.</summary>
    public void Begin()
    {
        (restarts, lowerings) = (0, 0);
        MustRestart = false;
        floors.Clear();
        raises.AsSpan().Clear();
        neverKept.CopyTo(givenUp, 0);
    }

    /// <summary>Whether to decode the list once more, with what was learned.</summary>
    public bool TryAgain(BenchTimes times)
    {
        if (!MustRestart && restarts > 0 && lowerings < MostLowerings && floors.Lower(times))
        {
            lowerings++;
            Restart();
        }

        var again = MustRestart;
        MustRestart = false;
        return again;
    }

    /// <summary>Whether a stage stays unplaced, as no moment keeps its greatest lag.</summary>
    public bool IsGivenUp(int stage) => givenUp[stage];

    /// <summary>What is asked of a stage beside links and dates.</summary>
    public void Apply(int stage, ref int earliest, ref int leastFinish) => floors.Apply(stage, ref earliest, ref leastFinish);

    /// <summary>
    /// Looks whether what must follow a stage soon still can, once the stage is placed somewhere; if not, the stage's
    /// bounds are raised.
    /// </summary>
    public bool MustComeLater(
        int stage, SchedulePart first, SchedulePart last, BenchTimes times, ref int earliest, ref int leastFinish)
    {
        if (!compiled.GreatestLags.HoldsBack[stage])
        {
            return false;
        }

        probe.Reset(MostProbes);
        if (!probe.MustComeLater(stage, first.Start, last.End, times, givenUp, floors))
        {
            return false;
        }

        floors.Apply(stage, ref earliest, ref leastFinish);
        return true;
    }

    /// <summary>A stage has no moment: where it, or what it follows, was asked to come later in vain, that is given up.</summary>
    /// <returns>Whether it was this stage; then it may be placed without, unless the list is decoded once more.</returns>
    public bool GiveUpWhatWasInVain(int stage)
    {
        if (floors.IsRaised(stage))
        {
            GiveUp(compiled.LinkTo[floors.Origin(stage)]);
            return true;
        }

        if (floors.RaisedFor(stage) >= 0)
        {
            GiveUp(stage);
        }

        return false;
    }

    /// <summary>A stage can only be placed too late: what it follows is asked to come later, or it is left out.</summary>
    public void ComesTooLate(int stage, int start, int finish, BenchTimes times)
    {
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (compiled.ExcessOf(link, start, finish, times.Starts, times.Finishes) == 0)
            {
                continue;
            }

            if (++raises[link] > MostRaises)
            {
                GiveUp(stage);
                return;
            }

            floors.Raise(link, compiled.GreatestLags.Earliest(link, compiled.Arrives(link, start, finish)));
        }

        Restart();
    }

    private void GiveUp(int stage)
    {
        givenUp[stage] = true;
        Restart();
        if (MustRestart)
        {
            floors.Clear();
        }
    }

    private void Restart()
    {
        MustRestart = restarts < MostRestarts;
        restarts += MustRestart ? 1 : 0;
    }
}
