using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>
/// How soon any plan could publish an episode, for programs. Moments are local ISO date-times with their offset, days ISO
/// dates, lengths whole minutes; a member without a value is null.
/// </summary>
public sealed record ProofDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The episode.</summary>
    public required string Episode { get; init; }

    /// <summary>Its working title.</summary>
    public required string Title { get; init; }

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>No plan publishes it before this moment; null where none does as far as the plan looks.</summary>
    public required string? Earliest { get; init; }

    /// <summary>The day of that moment.</summary>
    public required string? EarliestDay { get; init; }

    /// <summary>The day on which the plan publishes it, or null.</summary>
    public required string? PlannedDay { get; init; }

    /// <summary>Whether these two days are one: no plan is better.</summary>
    public required bool Reached { get; init; }

    /// <summary>Days between the two, of which nobody knows whether they can be won; null where a day is missing.</summary>
    public required int? OpenDays { get; init; }

    /// <summary>The whole in a sentence.</summary>
    public required string Says { get; init; }

    /// <summary>What makes earlier days impossible.</summary>
    public required ProofReasonEntry Why { get; init; }
}

/// <summary>What makes earlier days impossible.</summary>
/// <param name="Kind">
/// slots: no earlier one is open to it. chain: these stages one after the other, even with every station to itself. load:
/// work that must come first takes more minutes than these stations are open. together: what waits for what, and these
/// stations.
/// </param>
/// <param name="Says">In words, to follow a colon.</param>
/// <param name="Stages">The stages of a chain, in order.</param>
/// <param name="Stations">The stations.</param>
/// <param name="From">From when on the work of a load can be done, or null.</param>
/// <param name="Until">By when it would have to be done, or null.</param>
/// <param name="NeededMinutes">Minutes of work of a load, or null.</param>
/// <param name="OpenMinutes">Minutes in which it can be done, or null.</param>
public sealed record ProofReasonEntry(
    string Kind,
    string Says,
    IReadOnlyList<KeyEntry> Stages,
    IReadOnlyList<string> Stations,
    string? From,
    string? Until,
    int? NeededMinutes,
    int? OpenMinutes);
