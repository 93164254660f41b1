namespace EpisodePlanner.Scheduling;

/// <summary>How many bench schedules were made of those that may be.</summary>
internal sealed class BenchCount(int budget, IProgress<double>? progress, CancellationToken stop)
{
    /// <summary>Progress is told after the first schedule and about so often in all.</summary>
    private const int Reports = 1000;

    public int Budget => budget;

    public int Generated { get; private set; }

    /// <summary>Whether another schedule may be made; the first always may.</summary>
    public bool MayGoOn => Generated == 0 || (Generated < budget && !stop.IsCancellationRequested);

    /// <summary>So many more were made.</summary>
    public void Add(int made)
    {
        var step = Math.Max(1, budget / Reports);
        var isDue = Generated == 0 || (Generated + made) / step > Generated / step || Generated + made >= budget;
        Generated += made;
        if (isDue)
        {
            progress?.Report(Math.Min(1, (double)Generated / budget));
        }
    }
}
