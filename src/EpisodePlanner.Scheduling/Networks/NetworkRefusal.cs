using System.Collections.Immutable;

namespace EpisodePlanner.Scheduling.Networks;

/// <summary>Why activities and links do not make an <see cref="ActivityNetwork"/>.</summary>
public abstract record NetworkRefusal
{
    private protected NetworkRefusal()
    {
    }

    /// <summary>The reason as a sentence: what is wrong, where, and what would be right.</summary>
    public abstract string Sentence { get; }
}

/// <summary>An activity takes less than no time.</summary>
/// <param name="Activity">Its index.</param>
/// <param name="Name">Its name.</param>
/// <param name="Duration">The duration given, below zero.</param>
public sealed record NegativeDuration(int Activity, string Name, long Duration) : NetworkRefusal
{
    /// <inheritdoc/>
    public override string Sentence => $"\"{Name}\" lasts {Duration}; a duration is zero or more.";
}

/// <summary>A link names an activity that is not in the list.</summary>
/// <param name="Link">Index of the link.</param>
/// <param name="Activity">The index it names.</param>
/// <param name="Count">How many activities there are; the indices run from 0 to one below this.</param>
public sealed record UnknownActivity(int Link, int Activity, int Count) : NetworkRefusal
{
    /// <inheritdoc/>
    public override string Sentence =>
        $"Link {Link} names activity {Activity}; there are {Count} activities, counted from 0.";
}

/// <summary>A link is of no <see cref="LinkKind"/>.</summary>
/// <param name="Link">Index of the link.</param>
/// <param name="Kind">The value given.</param>
public sealed record UnknownLinkKind(int Link, LinkKind Kind) : NetworkRefusal
{
    /// <inheritdoc/>
    public override string Sentence => $"Link {Link} is of kind {Kind}; a link is of one of the four kinds.";
}

/// <summary>
/// Durations and lags are together too large for dates to be sure to fit 64 bits: without their signs they add up
/// to more than <see cref="ActivityNetwork.LargestSpan"/>.
/// </summary>
public sealed record SpanTooLarge : NetworkRefusal
{
    /// <inheritdoc/>
    public override string Sentence =>
        $"Durations and lags add up to more than {ActivityNetwork.LargestSpan}; use a coarser unit.";
}

/// <summary>Activities wait for each other in a circle, so none of them can be first.</summary>
/// <param name="Members">
/// Their indices in the order of the links: a link leads from each to the next and from the last to the first.
/// Each appears once, the lowest index first; one member means a link from an activity to itself.
/// </param>
/// <param name="Names">Their names, in the same order.</param>
public sealed record LinkCircle(ImmutableArray<int> Members, ImmutableArray<string> Names) : NetworkRefusal
{
    /// <inheritdoc/>
    public override string Sentence => Names.Length == 1
        ? $"\"{Names[0]}\" waits for itself; take that link away."
        : $"A circle: {string.Join(", then ", Names.Select(name => $"\"{name}\""))}, then \"{Names[0]}\" again; "
            + "take one of these links away.";
}
