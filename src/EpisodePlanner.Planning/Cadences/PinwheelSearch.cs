namespace EpisodePlanner.Planning;

/// <summary>
/// Searches the states in which so many slots are left to each before its interval is broken: where one comes again, the
/// turns between are a rotation; where every turn from a state leads to a broken interval, the state is lost.
/// </summary>
internal sealed class PinwheelSearch(IReadOnlyList<int> intervals, int mostStates)
{
    private readonly HashSet<State> lost = [];
    private readonly Dictionary<State, int> onPath = [];
    private readonly List<Step> path = [];

    /// <summary>Searches from the state in which each has just had its turn, the best that can be.</summary>
    public PinwheelResult Run()
    {
        Enter(new State([.. intervals]));
        while (path.Count > 0)
        {
            if (lost.Count + onPath.Count > mostStates)
            {
                return new PinwheelResult.Unknown();
            }

            var step = path[^1];
            if (!step.TryNext(out var turn))
            {
                Leave(step.State);
                continue;
            }

            var next = After(step.State, turn);
            if (onPath.TryGetValue(next, out var place))
            {
                return new PinwheelResult.Holds([.. path.Skip(place).Select(taken => taken.Turn)]);
            }

            if (!lost.Contains(next) && IsHopeful(next))
            {
                Enter(next);
            }
        }

        return new PinwheelResult.Impossible();
    }

    private void Enter(State state)
    {
        onPath.Add(state, path.Count);
        path.Add(new Step(state));
    }

    private void Leave(State state)
    {
        onPath.Remove(state);
        lost.Add(state);
        path.RemoveAt(path.Count - 1);
    }

    private State After(State state, int turn)
    {
        var left = state.Left.Select(slots => slots - 1).ToArray();
        left[turn] = intervals[turn];
        return new State(left);
    }

    /// <summary>Whether of the next n slots no more than n are due, for every n.</summary>
    private static bool IsHopeful(State state)
    {
        var due = state.Left.Order().ToArray();
        return due.Index().All(x => x.Item > x.Index);
    }

    /// <summary>A state with the turns that are left to try: the most urgent first.</summary>
    private sealed class Step(State state)
    {
        private readonly int[] turns = [.. Enumerable.Range(0, state.Left.Length).OrderBy(i => state.Left[i]).ThenBy(i => i)];
        private int next;

        public State State => state;

        public int Turn => turns[next - 1];

        public bool TryNext(out int turn)
        {
            // Where one is due now, no other turn will do.
            var tries = state.Left[turns[0]] == 1 ? 1 : turns.Length;
            turn = next < tries ? turns[next] : -1;
            next++;
            return turn >= 0;
        }
    }

    /// <summary>Slots left to each before its interval is broken.</summary>
    private readonly struct State(int[] left) : IEquatable<State>
    {
        public int[] Left => left;

        public bool Equals(State other) => Left.AsSpan().SequenceEqual(other.Left);

        public override bool Equals(object? obj) => obj is State other && Equals(other);

        public override int GetHashCode()
        {
            var hash = default(HashCode);
            foreach (var slots in Left)
            {
                hash.Add(slots);
            }

            return hash.ToHashCode();
        }
    }
}
