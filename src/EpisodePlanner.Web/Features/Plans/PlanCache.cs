namespace EpisodePlanner.Web.Features.Plans;

/// <summary>The plans asked for last, each made once; the one not asked for the longest goes where there are too many.</summary>
/// <param name="most">How many are kept, 1 or more.</param>
internal sealed class PlanCache(int most)
{
    private readonly Lock gate = new();
    private readonly LinkedList<(PlanKey Key, SharedWork<MadePlan> Work)> byUse = new();
    private readonly Dictionary<PlanKey, LinkedListNode<(PlanKey Key, SharedWork<MadePlan> Work)>> byKey = [];

    /// <summary>The work of making a plan: what is there, or what is begun now.</summary>
    public SharedWork<MadePlan> Of(PlanKey key, Func<CancellationToken, Task<MadePlan>> make)
    {
        lock (gate)
        {
            if (byKey.TryGetValue(key, out var found))
            {
                byUse.Remove(found);
            }
            else
            {
                found = new((key, new SharedWork<MadePlan>(make)));
                byKey.Add(key, found);
            }

            byUse.AddFirst(found);
            if (byUse.Count > most)
            {
                byKey.Remove(byUse.Last!.Value.Key);
                byUse.RemoveLast();
            }

            return found.Value.Work;
        }
    }
}
