namespace EpisodePlanner.Scheduling.Networks;

/// <summary>A promise that one activity keeps its distance from another.</summary>
/// <param name="From">Index of the earlier activity.</param>
/// <param name="To">Index of the later activity.</param>
/// <param name="Kind">Which ends are tied.</param>
/// <param name="Lag">Least distance between the two ends, in the unit of the durations; of any sign.</param>
public readonly record struct NetworkLink(int From, int To, LinkKind Kind, long Lag = 0)
{
    /// <summary>
    /// The least distance between the two <em>starts</em> that keeps this link. It turns every kind into the same
    /// inequality, start(To) − start(From) ≥ this value, which may be negative.
    /// </summary>
    /// <param name="from">Duration of <see cref="From"/>.</param>
    /// <param name="to">Duration of <see cref="To"/>.</param>
    /// <exception cref="OverflowException">The value does not fit 64 bits.</exception>
    public long StartDifference(long from, long to) => Kind switch
    {
        LinkKind.After => from + Lag,
        LinkKind.TogetherStart => Lag,
        LinkKind.TogetherFinish => from + Lag - to,
        LinkKind.StartToFinish => Lag - to,
        _ => throw new InvalidOperationException($"There is no link of kind {Kind}."),
    };
}
