namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Keys for serial generation, lower first: one per stage, then one per stage for the unloads of runs. Ties go to the
/// stage that comes first.
/// </summary>
internal static class PriorityRules
{
    /// <summary>Stages in the order the maker accepted; the others after them.</summary>
    public static int[] Accepted(CompiledProblem compiled, IReadOnlyList<int> order) => WithUnloads(Ranks(compiled, order));

    /// <summary>The rules in the order in which they are tried; each is computed when it is asked for.</summary>
    /// <param name="late">The latest starts for the due dates.</param>
    public static IEnumerable<(string Rule, int[] Keys)> All(DueLateness late)
    {
        yield return ("least time to its due date", WithUnloads(late.ForDue));
        yield return ("least time to the end", WithUnloads(late.ForEnd()));
        yield return ("first possible", WithUnloads(late.EarlyStart));
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
    private static int[] WithUnloads(int[] keys) => [.. keys, .. keys];
}

/// <summary>How late stages may start for their due dates, and for the end of all work.</summary>
internal sealed class DueLateness
{
    private readonly CalendarPasses passes;

    public DueLateness(CompiledProblem compiled)
    {
        passes = new CalendarPasses(compiled);
        ForDue = passes.Late([.. compiled.Problem.Stages.Select(stage => Math.Min(stage.Due, compiled.Problem.Horizon))]).Start;
    }

    /// <summary>The latest starts that keep due dates; the earliest start where none does.</summary>
    public int[] ForDue { get; }

    public int[] EarlyStart => passes.EarlyStart;

    /// <summary>The latest starts that leave the end of the work, hands aside, where it is.</summary>
    public int[] ForEnd() =>
        passes.Late([.. Enumerable.Repeat(Math.Max(0, passes.EarlyFinish.DefaultIfEmpty(0).Max()), passes.EarlyFinish.Length)]).Start;
}
