using System.Runtime.InteropServices;

namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Finds the mode in which a stage keeps its greatest lags best, then is finished first, then starts first.</summary>
internal sealed class ModeChoice(CompiledProblem compiled, StagePlacer placer)
{
    private List<SchedulePart> best = [];
    private List<SchedulePart> trial = [];

    /// <summary>The parts found last.</summary>
    public ReadOnlySpan<SchedulePart> Parts => CollectionsMarshal.AsSpan(best);

    /// <summary>By how many minutes they come too late for a greatest lag.</summary>
    public int Excess { get; private set; }

    /// <summary>Finds the parts of a stage within bounds; false where no mode has room before the horizon.</summary>
    public bool TryFind(int stage, int earliest, int leastFinish, BenchTimes times)
    {
        var found = false;
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (!placer.TryPlace(stage, mode, earliest, leastFinish, trial))
            {
                continue;
            }

            var excess = compiled.Excess(stage, trial[0].Start, trial[^1].End, times.Starts, times.Finishes);
            if (!found || (excess, trial[^1].End, trial[0].Start).CompareTo((Excess, best[^1].End, best[0].Start)) < 0)
            {
                (best, trial, Excess) = (trial, best, excess);
                found = true;
            }
        }

        return found;
    }

    /// <summary>Takes a wait that begins at a minute as what was found.</summary>
    public void SetWait(int start, int end)
    {
        best.Clear();
        best.Add(new SchedulePart(PartKind.Wait, start, end, 0));
        Excess = 0;
    }
}
