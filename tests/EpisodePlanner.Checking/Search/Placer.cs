using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Finds the placements of one stage that its surroundings leave; links and the horizon are looked at elsewhere.</summary>
internal abstract class Placer(Surroundings around, int stage)
{
    protected Surroundings Around { get; } = around;

    protected BenchStage About { get; } = around.Problem.Stages[stage];

    public static Placer Of(Surroundings around, int stage) => around.Problem.Stages[stage].Kind switch
    {
        StageKind.Attended => new AttendedPlacer(around, stage),
        StageKind.Run => new RunPlacer(around, stage),
        _ => new WaitPlacer(around, stage),
    };

    /// <summary>
    /// Every placement from a start. Where finishes are given and there is a choice of finishes, only the first at or
    /// after each of them.
    /// </summary>
    public abstract IEnumerable<SchedulePart[]> At(int start, int mode, IReadOnlyList<int>? finishes);

    /// <summary>
    /// Starts between two minutes (both included) that are worth trying: where there is any placement that finishes at
    /// or after one of the finishes and as soon as possible after it, there is one from one of these starts.
    /// </summary>
    public abstract IEnumerable<int> Starts(int mode, int from, int to, IReadOnlyList<int> finishes);

    /// <summary>The first minute between two (both included) with a true answer that stays true; null for none.</summary>
    protected static int? First(int from, int to, Func<int, bool> holds)
    {
        if (from > to || !holds(to))
            return null;

        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            if (holds(middle))
                to = middle;
            else
                from = middle + 1;
        }

        return to;
    }
}
