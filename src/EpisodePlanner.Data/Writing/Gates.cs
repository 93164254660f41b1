namespace EpisodePlanner.Data.Writing;

/// <summary>Lets one writer at a time through, for each name; the others wait their turn without holding a thread.</summary>
internal sealed class Gates
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, Gate> gates = new(StringComparer.Ordinal);

    /// <summary>Waits for the turn; it ends when the result is disposed of.</summary>
    public async Task<IDisposable> Enter(string name, CancellationToken stop)
    {
        var gate = Take(name);
        try
        {
            await gate.Open.WaitAsync(stop);
        }
        catch
        {
            Leave(name, gate);
            throw;
        }

        return new Pass(this, name, gate);
    }

    private Gate Take(string name)
    {
        lock (turn)
        {
            if (!gates.TryGetValue(name, out var gate))
            {
                gates[name] = gate = new Gate();
            }

            gate.Users++;
            return gate;
        }
    }

    private void Leave(string name, Gate gate)
    {
        lock (turn)
        {
            if (--gate.Users == 0)
            {
                gates.Remove(name);
                gate.Open.Dispose();
            }
        }
    }

    private sealed class Gate
    {
        public SemaphoreSlim Open { get; } = new(1);

        public int Users { get; set; }
    }

    private sealed class Pass(Gates gates, string name, Gate gate) : IDisposable
    {
        private bool isOver;

        public void Dispose()
        {
            if (!isOver)
            {
                isOver = true;
                gate.Open.Release();
                gates.Leave(name, gate);
            }
        }
    }
}
