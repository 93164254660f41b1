using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>How soon any plan could publish an episode, and why not sooner.</summary>
public sealed record EpisodeProof
{
    /// <summary>The episode as the plan has it.</summary>
    public required PlannedEpisode Episode { get; init; }

    /// <summary>No plan with these episodes publishes it before this moment; null where none does as far as the plan looks.</summary>
    public required Instant? Earliest { get; init; }

    /// <summary>The date of that moment, or null.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>What makes earlier dates impossible.</summary>
    public required ProofReason Why { get; init; }

    /// <summary>Whether the plan publishes it on that very date.</summary>
    public bool IsReached => Date is not null && Date == Episode.Date;

    /// <summary>Days between that date and the plan's, of which nobody knows whether they can be won; null without a date.</summary>
    public int? OpenDays => Date is { } date && Episode.Date is { } planned ? Period.DaysBetween(date, planned) : null;
}

/// <summary>What makes earlier dates impossible.</summary>
public abstract record ProofReason
{
    private ProofReason()
    {
    }

    /// <summary>No earlier slot is open to the series, or the episodes before it need them.</summary>
    public sealed record Slots : ProofReason;

    /// <summary>A chain of work, waits and links, even with every station to itself.</summary>
    /// <param name="Stages">The stages, in order.</param>
    public sealed record Chain(ValueList<PlannedStage> Stages) : ProofReason;

    /// <summary>Work that must come first takes longer than stations are open.</summary>
    /// <param name="Stations">The stations, by id; of several, the work may choose.</param>
    /// <param name="From">From when on this work can be done.</param>
    /// <param name="Until">By when it would have to be done for an earlier slot.</param>
    /// <param name="NeededMinutes">Minutes of work.</param>
    /// <param name="OpenMinutes">Minutes in which it can be done.</param>
    public sealed record Load(ValueList<Id> Stations, Instant From, Instant Until, int NeededMinutes, int OpenMinutes) : ProofReason;

    /// <summary>Links and waits, and these stations, together.</summary>
    /// <param name="Stations">By id.</param>
    public sealed record Together(ValueList<Id> Stations) : ProofReason;
}
