using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Proves what no plan can do.</summary>
public interface IPlanProver
{
    /// <summary>Says how soon any plan could publish an episode.</summary>
    /// <param name="question">The plan and what it rests on.</param>
    /// <param name="episode">The episode, by index.</param>
    /// <param name="limits">How long to look.</param>
    /// <param name="progress">Told the share of the limits used, 0 to 1.</param>
    /// <param name="stop">Stops soon; the bound is right whenever it stops.</param>
    PublishingBound EarliestPublish(
        PlanQuestion question, int episode, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default);

    /// <summary>
    /// Says how little any plan could weigh that does all the work, ends at most a week after the known one, and gives every
    /// episode a date.
    /// </summary>
    /// <param name="question">The plan and what it rests on; with its aims.</param>
    /// <param name="limits">How long to look at each part.</param>
    /// <param name="progress">Told the share of the parts looked at, 0 to 1.</param>
    /// <param name="stop">Stops soon; the bounds are right whenever it stops.</param>
    WeightsBound Weigh(
        PlanQuestion question, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default);
}

/// <summary>How little a plan can weigh at best.</summary>
/// <param name="Parts">
/// In the order of <see cref="PlanWeights"/>: no plan that is as good as the known one in all parts before weighs less in
/// this one. It ends with the first part that is not reached.
/// </param>
public sealed record WeightsBound(ValueList<long> Parts);

/// <summary>How soon an episode can be public at best.</summary>
/// <param name="Minute">
/// No plan with these episodes publishes it before this minute; null where none does within the plan's horizon.
/// </param>
/// <param name="Binding">What makes earlier windows impossible.</param>
public sealed record PublishingBound(int? Minute, PublishingBinding Binding);

/// <summary>What makes every window before a bound impossible.</summary>
public abstract record PublishingBinding
{
    private PublishingBinding()
    {
    }

    /// <summary>No earlier window is open to the series, or those before it in the story need them.</summary>
    public sealed record Windows : PublishingBinding;

    /// <summary>A chain of work, waits and links, even with every station to itself.</summary>
    /// <param name="Stages">The stages, in order.</param>
    public sealed record Chain(ValueList<int> Stages) : PublishingBinding;

    /// <summary>Work that must come first takes more minutes than stations have.</summary>
    /// <param name="Stations">The stations; of several, the work may choose.</param>
    /// <param name="From">The minute from which this work can begin.</param>
    /// <param name="Until">The minute by which it would have to be done for an earlier window.</param>
    /// <param name="Needed">Minutes of work.</param>
    /// <param name="Open">Minutes in which it can be done.</param>
    public sealed record Load(ValueList<int> Stations, int From, int Until, long Needed, long Open) : PublishingBinding;

    /// <summary>Several things together: links and waits, and these stations.</summary>
    /// <param name="Stations">
    /// With one of them fewer, the bound was not found again: as few as it takes, so far as there was time to look.
    /// </param>
    public sealed record Together(ValueList<int> Stations) : PublishingBinding;
}
