using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The orders in which an exhaustive search places stages.</summary>
internal static class SearchOrders
{
    /// <summary>
    /// Stages that cannot pause first, then those that can in every order; each directly followed by what is glued to it.
    /// </summary>
    public static IEnumerable<IReadOnlyList<int>> Of(BenchProblem problem)
    {
        var free = Enumerable.Range(0, problem.Stages.Count).Where(i => problem.Stages[i].GluedTo == -1).ToArray();
        var whole = free.Where(i => !CanPause(problem.Stages[i])).ToArray();
        var pausing = free.Where(i => CanPause(problem.Stages[i])).ToArray();
        return Permutations(pausing)
            .Select(p => whole.Concat(p).SelectMany(i => Followers.Group(problem, i)).ToArray());
    }

    private static bool CanPause(BenchStage stage) =>
        stage.Kind == StageKind.Attended && stage.MinimumBlock < stage.Minutes;

    private static IEnumerable<IEnumerable<int>> Permutations(int[] members) => members.Length == 0
        ? [[]]
        : members.SelectMany(first => Permutations([.. members.Where(m => m != first)]).Select(rest => rest.Prepend(first)));
}
