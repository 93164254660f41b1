namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// The earliest dates of all stages over links and hours, with unlimited stations. Greatest lags are kept: what a stage
/// that comes too late should follow soon is moved later, until all fits; every date stays the earliest possible.
/// </summary>
internal sealed class EarlyDates
{
    private const int Never = -1;

    /// <summary>A link that asked so often is taken to ask for ever: no plan has as many openings.</summary>
    private const int MostRaises = 20_000;

    private readonly CompiledProblem compiled;
    private readonly StagePlacer placer;
    private readonly Floors floors;
    private readonly int[] rank;
    private readonly int[] raises;
    private readonly bool[] isOld;
    private readonly List<SchedulePart> parts = [];
    private int vain = Never;

    /// <summary>Finds the dates.</summary>
    /// <param name="compiled">The problem.</param>
    /// <param name="state">Nothing taken; afterwards nobody is set up anywhere.</param>
    /// <param name="placer">Places stages there.</param>
    public EarlyDates(CompiledProblem compiled, BenchState state, StagePlacer placer)
    {
        (this.compiled, this.placer, floors) = (compiled, placer, new Floors(compiled));
        var count = compiled.StageCount;
        (Start, Finish, Unkept) = (new int[count], new int[count], new int[count]);
        (rank, isOld, raises) = (new int[count], new bool[count], new int[compiled.LinkTo.Length]);
        Unkept.AsSpan().Fill(Never);
        for (var i = 0; i < count; i++)
        {
            rank[compiled.Problem.Graph.Order[i]] = i;
        }

        PlaceBegun();

        // Where people are set up now binds their work that is going on; other work may have people of its own.
        state.Clear();
        GiveUpContradictions();
        PlaceOthers();
    }

    /// <summary>By stage: the earliest start; −1 for never.</summary>
    public int[] Start { get; }

    /// <summary>By stage: the earliest finish; −1 for never.</summary>
    public int[] Finish { get; }

    /// <summary>By stage: the link whose greatest lag no moment keeps; −1 where that is not what makes it impossible.</summary>
    public int[] Unkept { get; }

    private void PlaceBegun()
    {
        foreach (var stage in compiled.Problem.Graph.Order)
        {
            if (compiled.Begun[stage])
            {
                (Start[stage], Finish[stage]) = Earliest(stage);
            }
        }
    }

    private void GiveUpContradictions()
    {
        for (var link = 0; link < compiled.LinkTo.Length; link++)
        {
            if (compiled.GreatestLags.IsAny(link) && compiled.LagHours[link] is null
                && compiled.GreatestLags.Latest(link, 0) < compiled.Lags[link])
            {
                Unkept[compiled.LinkTo[link]] = link;
            }
        }
    }

    /// <summary>What has no moment is left out, stage by stage; in the end nothing that could be there after all.</summary>
    private void PlaceOthers()
    {
        var leftOut = new List<int>();
        for (var vain = Place(); vain != Never; vain = Place())
        {
            leftOut.Add(compiled.LinkTo[vain]);
            Unkept[leftOut[^1]] = vain;
        }

        if (leftOut.Count < 2)
        {
            return;
        }

        foreach (var stage in leftOut)
        {
            var link = Unkept[stage];
            Unkept[stage] = Never;
            Unkept[stage] = Place() == Never ? Never : link;
        }

        Place();
    }

    /// <summary>Places all; the link for which something was moved in vain, −1 where all that is there fits.</summary>
    private int Place()
    {
        floors.Clear();
        raises.AsSpan().Clear();
        isOld.AsSpan().Clear();
        vain = Never;
        for (var from = 0; from < rank.Length && vain == Never;)
        {
            from = PlaceFrom(from);
        }

        return vain;
    }

    /// <summary>Places what is not placed yet, or has to be again, from a rank on; the rank from which to go on.</summary>
    private int PlaceFrom(int from)
    {
        var next = int.MaxValue;
        for (var at = from; at < rank.Length; at++)
        {
            var stage = compiled.Problem.Graph.Order[at];
            if (isOld[stage] || compiled.Begun[stage])
            {
                continue;
            }

            var (start, finish) = Earliest(stage);
            if (start == Never && Vain(stage) is >= 0 and var link)
            {
                vain = link;
                return next;
            }

            isOld[stage] = true;
            Renew(stage, start, finish);
            if (start != Never && compiled.Excess(stage, start, finish, Start, Finish) > 0)
            {
                next = Math.Min(next, Raise(stage));
            }
        }

        return next;
    }

    /// <summary>Remembers dates; where they are new, what waits for them is placed again.</summary>
    private void Renew(int stage, int start, int finish)
    {
        if ((start, finish) == (Start[stage], Finish[stage]))
        {
            return;
        }

        (Start[stage], Finish[stage]) = (start, finish);
        foreach (var link in compiled.Problem.Graph.Outgoing(stage))
        {
            isOld[compiled.LinkTo[link]] = false;
        }
    }

    /// <summary>Moves what a stage follows too late; the least rank of these.</summary>
    private int Raise(int stage)
    {
        var least = int.MaxValue;
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (compiled.ExcessOf(link, Start[stage], Finish[stage], Start, Finish) == 0)
            {
                continue;
            }

            vain = ++raises[link] > MostRaises ? link : vain;
            var moved = floors.Raise(link, compiled.GreatestLags.Earliest(link, compiled.Arrives(link, Start[stage], Finish[stage])));
            isOld[moved] = false;
            least = Math.Min(least, rank[moved]);
        }

        // The links hold the stage to what is moved, so it is looked at once more itself.
        isOld[stage] = false;
        return least;
    }

    /// <summary>Where a stage has no moment: the link for which it, or what it follows, was moved in vain; −1 for none.</summary>
    private int Vain(int stage) => floors.IsRaised(stage) ? floors.Origin(stage) : floors.RaisedFor(stage);

    private (int Start, int Finish) Earliest(int stage)
    {
        if (Unkept[stage] != Never || !compiled.TryBounds(stage, Start, Finish, out var earliest, out var leastFinish))
        {
            return (Never, Never);
        }

        floors.Apply(stage, ref earliest, ref leastFinish);
        var best = (Excess: int.MaxValue, Finish: int.MaxValue, Start: Never);
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, earliest, leastFinish, parts))
            {
                var (start, finish) = (parts[0].Start, parts[^1].End);
                var tried = (compiled.Excess(stage, start, finish, Start, Finish), finish, start);
                best = tried.CompareTo(best) < 0 ? tried : best;
            }
        }

        return best.Start == Never ? (Never, Never) : (best.Start, best.Finish);
    }
}
