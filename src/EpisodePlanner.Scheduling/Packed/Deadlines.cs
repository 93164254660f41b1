namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// The finishes after which a schedule is no longer of interest: those the objective tells, moved back over the links,
/// so that decoding stops as early as the activities still to come make it certain.
/// </summary>
internal sealed class Deadlines
{
    private readonly PackedColumns columns;
    private readonly int[] outer;
    private readonly IDeadlineObjective? objective;
    private readonly int[] told;
    private readonly int[] latest;
    private readonly long[] bar;
    private bool isSet;

    public Deadlines(PackedColumns columns, int[] outer, IScheduleObjective objective)
    {
        this.columns = columns;
        this.outer = outer;
        this.objective = objective as IDeadlineObjective;
        told = new int[columns.Count];
        latest = new int[columns.Count];
        bar = new long[objective.Parts];
        Clear();
    }

    /// <summary>By activity: the latest finish of interest.</summary>
    public ReadOnlySpan<int> Latest => latest;

    /// <summary>Every schedule is of interest.</summary>
    public void Clear()
    {
        latest.AsSpan().Fill(int.MaxValue);
        isSet = false;
    }

    /// <summary>Schedules with a greater row than this are of no interest.</summary>
    public void Set(ReadOnlySpan<long> row)
    {
        if (objective is null || (isSet && row.SequenceEqual(bar)))
        {
            return;
        }

        row.CopyTo(bar);
        isSet = true;
        objective.LatestFinishes(row, told);
        for (var i = 0; i < latest.Length; i++)
        {
            latest[i] = told[outer[i]];
        }

        MoveBack();
    }

    private void MoveBack()
    {
        for (var i = latest.Length - 1; i >= 0; i--)
        {
            var item = columns.Items[i];
            for (var k = item.FirstWait; k < item.EndWait; k++)
            {
                var before = columns.WaitsFor[k];
                if (before < latest.Length && latest[i] < int.MaxValue)
                {
                    latest[before] = (int)Math.Min(latest[before], (long)latest[i] - item.Duration - columns.Lags[k]);
                }
            }
        }
    }
}
