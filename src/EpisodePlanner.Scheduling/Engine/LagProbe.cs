namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Looks, while a stage is being placed, at the stages that must follow it within a greatest lag and wait for nothing
/// else: how soon they could follow if it were placed there. What the stage itself takes is not looked at, so they can
/// only come later than found, never sooner.
/// </summary>
internal sealed class LagProbe(CompiledProblem compiled, StagePlacer placer)
{
    private readonly List<SchedulePart> parts = [];
    private int left;

    /// <summary>Allows so many looks.</summary>
    public void Reset(int looks) => left = looks;

    /// <summary>Whether something could only follow too late; then the stage, or work it follows itself, is asked to come later.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="start">Where it would start.</param>
    /// <param name="finish">Where it would be finished.</param>
    /// <param name="times">The schedule so far; as it was afterwards.</param>
    /// <param name="givenUp">By stage: what is left out.</param>
    /// <param name="floors">Told what is asked.</param>
    public bool MustComeLater(int stage, int start, int finish, BenchTimes times, bool[] givenUp, Floors floors)
    {
        var wait = compiled.GluedNext[stage];
        (times.Starts[stage], times.Finishes[stage]) = (start, finish);
        var later = OneMust(stage, times, givenUp, floors);
        if (wait >= 0)
        {
            (times.Starts[wait], times.Finishes[wait]) = (finish, compiled.WaitEnd(wait, finish));
            later = later || OneMust(wait, times, givenUp, floors);
            (times.Starts[wait], times.Finishes[wait]) = (-1, -1);
        }

        (times.Starts[stage], times.Finishes[stage]) = (-1, -1);
        return later;
    }

    private bool OneMust(int stage, BenchTimes times, bool[] givenUp, Floors floors)
    {
        foreach (var link in compiled.Problem.Graph.Outgoing(stage))
        {
            var next = compiled.LinkTo[link];
            if (compiled.GreatestLags.IsAny(link) && !givenUp[next] && WaitsForNothingElse(next, stage, times)
                && TooLate(link, next, times, givenUp, floors))
            {
                return true;
            }
        }

        return false;
    }

    private bool WaitsForNothingElse(int next, int stage, BenchTimes times)
    {
        var links = 0;
        foreach (var link in compiled.Problem.Graph.Incoming(next))
        {
            links += compiled.LinkFrom[link] == stage ? 1 : 0;
        }

        return times.WaitingFor[next] == links;
    }

    private bool TooLate(int link, int next, BenchTimes times, bool[] givenUp, Floors floors)
    {
        if (!compiled.TryBounds(next, times.Starts, times.Finishes, out var earliest, out var leastFinish))
        {
            return false;
        }

        while (left-- > 0 && Earliest(next, earliest, leastFinish, times) is { Start: >= 0 } found)
        {
            if (compiled.ExcessOf(link, found.Start, found.Finish, times.Starts, times.Finishes) > 0)
            {
                floors.Raise(link, compiled.GreatestLags.Earliest(link, compiled.Arrives(link, found.Start, found.Finish)));
                return true;
            }

            if (!compiled.GreatestLags.HoldsBack[next] || !MustComeLater(next, found.Start, found.Finish, times, givenUp, floors))
            {
                return false;
            }

            floors.Apply(next, ref earliest, ref leastFinish);
        }

        return false;
    }

    private (int Start, int Finish) Earliest(int stage, int earliest, int leastFinish, BenchTimes times)
    {
        var best = (Excess: int.MaxValue, Finish: int.MaxValue, Start: -1);
        for (var mode = 0; mode < compiled.Modes[stage].Length; mode++)
        {
            if (placer.TryPlace(stage, mode, earliest, leastFinish, parts))
            {
                var (start, finish) = (parts[0].Start, parts[^1].End);
                var tried = (compiled.Excess(stage, start, finish, times.Starts, times.Finishes), finish, start);
                best = tried.CompareTo(best) < 0 ? tried : best;
            }
        }

        return (best.Start, best.Finish);
    }
}
