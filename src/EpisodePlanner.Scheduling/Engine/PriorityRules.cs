using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Keys for serial generation, lower first: one per stage, then one for each unload that takes hands. Ties go to the
/// stage that comes first.
/// </summary>
internal static class PriorityRules
{
    /// <summary>Stages in the order the maker accepted; the others after them.</summary>
    public static int[] Accepted(CompiledProblem compiled, IReadOnlyList<int> order) => WithUnloads(compiled, Ranks(compiled, order));

    /// <summary>The rules in the order in which they are tried; each is computed when it is asked for.</summary>
    /// <param name="network">The network.</param>
    /// <param name="lateForDue">The latest starts that keep due dates; the earliest start where none does.</param>
    public static IEnumerable<(string Rule, int[] Keys)> All(WorkshopNetwork network, int[] lateForDue)
    {
        var compiled = network.Passes.Compiled;
        yield return ("least time to its due date", WithUnloads(compiled, lateForDue));
        yield return ("least time to the end", WithUnloads(compiled, [.. network.LateStart]));
        yield return ("first possible", WithUnloads(compiled, [.. network.EarlyStart]));
    }

    private static int[] Ranks(CompiledProblem compiled, IReadOnlyList<int> order)
    {
        var ranks = Enumerable.Repeat(order.Count, compiled.StageCount).ToArray();
        for (var rank = order.Count - 1; rank >= 0; rank--)
        {
            ranks[order[rank]] = rank;
        }

        return ranks;
    }

    /// <summary>The unload of a run goes as its load does.</summary>
    private static int[] WithUnloads(CompiledProblem compiled, int[] keys) => [.. keys, .. compiled.StageOfUnload.Select(run => keys[run])];
}
