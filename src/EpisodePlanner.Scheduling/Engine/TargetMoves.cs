namespace EpisodePlanner.Scheduling.Engine;

/// <summary>Small seeded moves of an order of targets: one goes a few places earlier or later.</summary>
internal sealed class TargetMoves(Targets targets, ulong seed)
{
    private const int Reach = 4;
    private const int Tries = 32;
    private readonly SplitMix random = new(seed);

    /// <summary>Writes another order like the given one; false where no move was found.</summary>
    public bool TryNext(ReadOnlySpan<int> order, Span<int> moved)
    {
        for (var i = 0; i < Tries && order.Length > 1; i++)
        {
            var from = random.Below(order.Length);
            var to = Math.Clamp(from - Reach + random.Below((2 * Reach) + 1), 0, order.Length - 1);
            if (from != to && IsAllowed(order, from, to))
            {
                Move(order, from, to, moved);
                return true;
            }
        }

        return false;
    }

    private bool IsAllowed(ReadOnlySpan<int> order, int from, int to)
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

    private static void Move(ReadOnlySpan<int> order, int from, int to, Span<int> moved)
    {
        order.CopyTo(moved);
        if (from < to)
        {
            order[(from + 1)..(to + 1)].CopyTo(moved[from..]);
        }
        else
        {
            order[to..from].CopyTo(moved[(to + 1)..]);
        }

        moved[to] = order[from];
    }
}
