namespace EpisodePlanner.Web.Features.Plans;

/// <summary>
/// Something that takes long to make and is made once, however many ask for it at the same time. It begins when it is
/// first asked for and is given up where everybody who waits has gone; what went wrong is tried again.
/// </summary>
/// <param name="make">Makes it, on a thread of its own.</param>
/// <typeparam name="T">What is made.</typeparam>
public sealed class SharedWork<T>(Func<CancellationToken, Task<T>> make)
{
    private readonly Lock gate = new();
    private Running? running;

    /// <summary>Waits for it.</summary>
    /// <param name="stop">Ends the waiting of this one.</param>
    public async Task<T> Get(CancellationToken stop)
    {
        var mine = Join();
        try
        {
            return await mine.Work.WaitAsync(stop);
        }
        finally
        {
            Leave(mine);
        }
    }

    private Running Join()
    {
        lock (gate)
        {
            if (running is null || running.Work.IsFaulted || running.Work.IsCanceled)
            {
                var stop = new CancellationTokenSource();
                running = new Running(Task.Run(() => make(stop.Token), CancellationToken.None), stop);
            }

            running.Waiting++;
            return running;
        }
    }

    private void Leave(Running mine)
    {
        lock (gate)
        {
            if (--mine.Waiting > 0 || mine.Work.IsCompleted)
            {
                return;
            }

            mine.Stop.Cancel();
            running = running == mine ? null : running;
        }
    }

    private sealed class Running(Task<T> work, CancellationTokenSource stop)
    {
        public Task<T> Work => work;

        public CancellationTokenSource Stop => stop;

        public int Waiting { get; set; }
    }
}
