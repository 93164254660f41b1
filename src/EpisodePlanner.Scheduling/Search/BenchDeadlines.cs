using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling;

/// <summary>
/// The finishes after which a bench schedule is no longer of interest: those the objective tells, moved back over links by
/// the least time that lies between.
/// </summary>
internal sealed class BenchDeadlines
{
    private readonly CompiledProblem compiled;
    private readonly IDeadlineObjective? objective;
    private readonly int[] latest;
    private readonly long[] bar;
    private bool isSet;

    public BenchDeadlines(CompiledProblem compiled, IScheduleObjective objective)
    {
        (this.compiled, this.objective) = (compiled, objective as IDeadlineObjective);
        latest = None(compiled.StageCount);
        bar = new long[1 + objective.Parts];
    }

    /// <summary>By stage: the latest finish of interest.</summary>
    public ReadOnlySpan<int> Latest => latest;

    /// <summary>No finish is too late.</summary>
    public static int[] None(int stages)
    {
        var none = new int[stages];
        none.AsSpan().Fill(int.MaxValue);
        return none;
    }

    /// <summary>Every schedule is of interest.</summary>
    public void Clear()
    {
        latest.AsSpan().Fill(int.MaxValue);
        isSet = false;
    }

    /// <summary>Schedules with a greater row than this are of no interest.</summary>
    /// <param name="row">How many stages are unplaced, then the row of the objective.</param>
    public void Set(ReadOnlySpan<long> row)
    {
        if (objective is null || (isSet && row.SequenceEqual(bar)))
        {
            return;
        }

        Clear();
        row.CopyTo(bar);
        isSet = true;
        if (row[0] == 0)
        {
            objective.LatestFinishes(row[1..], latest);
            MoveBack();
        }
    }

    /// <summary>What is done before a stage that starts after it has that stage's own minutes less.</summary>
    private void MoveBack()
    {
        for (var at = latest.Length - 1; at >= 0; at--)
        {
            var to = compiled.Problem.Graph.Order[at];
            foreach (var link in latest[to] == int.MaxValue || compiled.Begun[to] ? [] : compiled.Problem.Graph.Incoming(to))
            {
                if (compiled.LinkKinds[link] == LinkKind.After && compiled.Problem.Stages[to].WaitHours is null)
                {
                    ref var before = ref latest[compiled.LinkFrom[link]];
                    before = Math.Min(before, latest[to] - compiled.Minutes[to] - compiled.Lags[link]);
                }
            }
        }
    }
}
