namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Keys for serial generation, lower first: one per stage, then one per stage for the unloads of runs. Ties go to the
/// stage that comes first.
/// </summary>
internal static class PriorityRules
{
    /// <summary>The rules in the order in which they are tried; each is computed when it is asked for.</summary>
    public static IEnumerable<(string Rule, int[] Keys)> All(CompiledProblem compiled, IReadOnlyList<int> acceptedOrder)
    {
        if (acceptedOrder.Count > 0)
        {
            yield return ("the accepted order", WithUnloads(Ranks(compiled, acceptedOrder)));
        }

        var passes = new CalendarPasses(compiled);
        var dues = DueOrHorizon(compiled);
        var lateForDue = passes.Late(dues).Start;
        var urgency = Urgency(compiled, dues);
        yield return ("least time to its due date", WithUnloads(lateForDue));
        yield return ("first due, then least time", WithUnloads(RankBy(compiled, i => (urgency[i], lateForDue[i]))));

        var end = passes.EarlyFinish.DefaultIfEmpty(0).Max();
        var late = passes.Late([.. Enumerable.Repeat(Math.Max(0, end), compiled.StageCount)]).Start;
        yield return ("least time to the end", WithUnloads(late));
        yield return ("first due, then shortest", WithUnloads(RankBy(compiled, i => (urgency[i], compiled.Minutes[i]))));
        yield return ("first possible", WithUnloads(passes.EarlyStart));

        var group = GroupWork(compiled, urgency);
        yield return ("least work to its due date first", WithUnloads(RankBy(compiled, i => (group[i], lateForDue[i]))));
    }

    /// <summary>The earliest due date that a stage leads to.</summary>
    private static int[] Urgency(CompiledProblem compiled, int[] dues)
    {
        var urgency = dues.ToArray();
        foreach (var stage in compiled.Problem.Graph.Order.Reverse())
        {
            foreach (var link in compiled.Problem.Graph.Outgoing(stage))
            {
                urgency[stage] = Math.Min(urgency[stage], urgency[compiled.LinkTo[link]]);
            }
        }

        return urgency;
    }

    private static int[] DueOrHorizon(CompiledProblem compiled) =>
        [.. compiled.Problem.Stages.Select(stage => Math.Min(stage.Due, compiled.Problem.Horizon))];

    /// <summary>By stage: all the minutes of work that share its urgency.</summary>
    private static long[] GroupWork(CompiledProblem compiled, int[] urgency)
    {
        var work = new Dictionary<int, long>();
        for (var i = 0; i < compiled.StageCount; i++)
        {
            var minutes = compiled.Kinds[i] == StageKind.Attended ? compiled.Minutes[i] : 0;
            work[urgency[i]] = work.GetValueOrDefault(urgency[i]) + minutes;
        }

        return [.. urgency.Select(due => work[due])];
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

    private static int[] RankBy<TKey>(CompiledProblem compiled, Func<int, TKey> key)
    {
        var ranks = new int[compiled.StageCount];
        var rank = 0;
        foreach (var stage in Enumerable.Range(0, compiled.StageCount).OrderBy(key))
        {
            ranks[stage] = rank++;
        }

        return ranks;
    }

    /// <summary>The unload of a run goes as its load does.</summary>
    private static int[] WithUnloads(int[] keys) => [.. keys, .. keys];
}
