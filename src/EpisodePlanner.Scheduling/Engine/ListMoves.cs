namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Small seeded moves of a list of keys: one stage goes a little earlier or later.</summary>
internal sealed class ListMoves(CompiledProblem compiled, ulong seed)
{
    private readonly SplitMix random = new(seed);

    /// <summary>Another list like the given one; false where there is nothing to move.</summary>
    public bool TryNext(int[] keys, out int[] moved)
    {
        moved = keys;
        if (compiled.StageCount < 2)
        {
            return false;
        }

        var order = Enumerable.Range(0, keys.Length).OrderBy(item => keys[item]).ToList();
        var from = random.Below(order.Count);
        var reach = Math.Min(order.Count, 16);
        var to = Math.Clamp(from - reach + random.Below((2 * reach) + 1), 0, order.Count - 1);
        var item = order[from];
        order.RemoveAt(from);
        order.Insert(to, item);
        moved = new int[keys.Length];
        for (var rank = 0; rank < order.Count; rank++)
        {
            moved[order[rank]] = rank;
        }

        return true;
    }
}
