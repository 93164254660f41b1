using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>What an exhaustive search found.</summary>
/// <param name="Schedule">A best schedule; null only where the limit stopped the search before the first.</param>
/// <param name="Unplaced">How many stages even the best leaves unplaced.</param>
/// <param name="Best">Its objective.</param>
/// <param name="Tried">How many whole schedules were looked at.</param>
/// <param name="IsComplete">Whether all were; false where the limit stopped the search.</param>
public sealed record ExhaustiveResult(BenchSchedule? Schedule, int Unplaced, long[] Best, long Tried, bool IsComplete);

/// <summary>
/// Brute force for tiny problems: every start of every stage in every mode with every unload moment, and attended work in
/// the stretches that it takes from its start when it is placed after or before any of the others.
/// </summary>
/// <remarks>
/// As many stages as possible are placed; among those schedules the objective decides, lexicographically. Work that
/// pauses takes stretches that depend on what is placed before it, so those stages are tried in every order. A stage
/// that cannot pause fits or does not; placed later it leaves the stretches of the others as they are, so one order
/// is enough for these.
/// </remarks>
public static class ExhaustiveSearch
{
    /// <summary>The best of all schedules of a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="objective">What to minimise.</param>
    /// <param name="floor">
    /// For a schedule with some stages still missing, an objective that no completion of it can beat; null for none.
    /// </param>
    /// <param name="limit">How many whole schedules to look at before giving up.</param>
    public static ExhaustiveResult Best(
        BenchProblem problem,
        Func<BenchSchedule, long[]> objective,
        Func<BenchSchedule, long[]>? floor = null,
        long limit = 5_000_000)
    {
        var state = new SearchState(problem, objective, floor, limit);
        foreach (var order in SearchOrders.Of(problem))
            Place(state, order, 0);

        return state.Result();
    }

    private static void Place(SearchState state, IReadOnlyList<int> order, int depth)
    {
        if (state.IsHopeless(depth))
            return;

        if (depth == order.Count)
        {
            state.LookAt();
            return;
        }

        var stage = order[depth];
        if (state.MayPlace(stage))
        {
            foreach (var parts in Placements(state.Around(), stage))
            {
                state.Set(stage, parts);
                Place(state, order, depth + 1);
            }
        }

        if (state.MayLeaveOut(stage))
        {
            state.Set(stage, []);
            Place(state, order, depth + 1);
        }

        state.Set(stage, null);
    }

    private static IEnumerable<SchedulePart[]> Placements(Surroundings around, int stage)
    {
        if (Bounds.Of(around, stage) is not { Start: { } earliest, Finish: { } finish })
            return [];

        var placer = Placer.Of(around, stage);
        var first = Math.Max(0, earliest);
        return from mode in Enumerable.Range(0, around.Problem.Stages[stage].Modes.Count)
               from start in Enumerable.Range(first, Math.Max(0, around.Problem.Horizon - first + 1))
               from parts in placer.At(start, mode, null)
               where parts[^1].End >= finish && parts[^1].End <= around.Problem.Horizon
                   && Bounds.AllowAfter(around, stage, parts) && GreatestLags.Allow(around, stage, parts)
               select parts;
    }
}
