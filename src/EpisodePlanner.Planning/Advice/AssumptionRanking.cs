using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Ranks what was taken for granted by how far it moves the next upload.</summary>
public static class AssumptionRanking
{
    /// <summary>Makes the plan and ranks what it took for granted.</summary>
    public static ValueList<Assumption> Rank(PlanRequest request) => Rank(Planner.Make(request));

    /// <summary>
    /// Everything this workshop leaves to a default, each with another plausible answer tried by planning again: those
    /// that move the next upload furthest first, those that could not be tried last.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the trials; what was not tried by then has no measure.</param>
    public static ValueList<Assumption> Rank(Plan plan, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var trials = Trials.Of(plan);
        var ranked = new List<Assumption>();
        foreach (var trial in trials)
        {
            ranked.Add(stop.IsCancellationRequested ? trial.Assumption : Measure(plan, trial));
            progress?.Report((double)ranked.Count / trials.Count);
        }

        return ranked.OrderByDescending(a => a.MovesMinutes is { } minutes ? Math.Abs((long)minutes) : -1).ToValueList();
    }

    /// <summary>The question whose answer changes the plan most, or null where nothing was taken for granted.</summary>
    public static Assumption? Question(IEnumerable<Assumption> ranked) => ranked.FirstOrDefault();

    private static Assumption Measure(Plan plan, Trial trial)
    {
        if (trial.Change is not { } change)
        {
            return trial.Assumption;
        }

        var other = Planner.Make(plan.Request with { Workshop = change(plan.Request.Workshop) });
        var moves = NextUpload(other, plan.Horizon) - NextUpload(plan, plan.Horizon);
        return trial.Assumption with { MovesMinutes = (int)moves.TotalMinutes };
    }

    /// <summary>An upload without a date counts as if it were at the horizon.</summary>
    private static Instant NextUpload(Plan plan, Instant horizon) => plan.NextUpload?.Publish ?? horizon;
}
