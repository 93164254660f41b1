namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Small seeded moves of an order of targets: one goes a few places earlier or later.</summary>
internal sealed class TargetMoves(Targets targets, ulong seed)
{
    private const int Reach = 4;
    private const int Tries = 32;
    private readonly SplitMix random = new(seed);

    /// <summary>Another order like the given one; false where no move was found.</summary>
    public bool TryNext(int[] order, out int[] moved)
    {
        for (var i = 0; i < Tries && order.Length > 1; i++)
        {
            var from = random.Below(order.Length);
            var to = Math.Clamp(from - Reach + random.Below((2 * Reach) + 1), 0, order.Length - 1);
            if (from != to && IsAllowed(order, from, to))
            {
                moved = Move(order, from, to);
                return true;
            }
        }

        moved = order;
        return false;
    }

    private bool IsAllowed(int[] order, int from, int to)
    {
        for (var place = Math.Min(from, to); place <= Math.Max(from, to); place++)
        {
            var (first, second) = from < to ? (order[place], order[from]) : (order[from], order[place]);
            if (place != from && targets.MustFollow(first, second))
            {
                return false;
            }
        }

        return true;
    }

    private static int[] Move(int[] order, int from, int to)
    {
        var list = order.ToList();
        list.RemoveAt(from);
        list.Insert(to, order[from]);
        return [.. list];
    }
}
