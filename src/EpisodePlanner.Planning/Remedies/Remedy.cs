namespace EpisodePlanner.Planning;

/// <summary>What sort of way out of a silence.</summary>
public enum RemedyKind
{
    /// <summary>An episode ends with an earlier milestone, or a cut moves.</summary>
    Cut,

    /// <summary>An episode from footage that exists, or from a failure that was filmed.</summary>
    OtherEpisode,

    /// <summary>More stations, open days, shorter work, runs left alone where that is allowed, looser publishing.</summary>
    Bench,

    /// <summary>Work that this silence does not wait for is put off.</summary>
    PutOff,

    /// <summary>Two of the others together.</summary>
    Pair,

    /// <summary>The series rests openly.</summary>
    Rest,
}

/// <summary>A way out of a silence that was planned from nothing but the changed workshop.</summary>
public sealed record Remedy
{
    /// <summary>Of what sort.</summary>
    public required RemedyKind Kind { get; init; }

    /// <summary>In words: "one more Tall Printer".</summary>
    public required string Says { get; init; }

    /// <summary>The change to the workshop; taking the remedy is applying it.</summary>
    public required Change Change { get; init; }

    /// <summary>What to mind where it could hurt somebody.</summary>
    public ValueList<Caution> Cautions { get; init; } = [];

    /// <summary>The plan before.</summary>
    public required Plan Before { get; init; }

    /// <summary>The plan after it.</summary>
    public required Plan Then { get; init; }

    /// <summary>Days beyond the promise of the worst silence to come, before.</summary>
    public required int OverBefore { get; init; }

    /// <summary>The same after it; 0 where the promise holds.</summary>
    public required int OverThen { get; init; }

    /// <summary>Days won, negative for lost.</summary>
    public int DaysWon => OverBefore - OverThen;

    /// <summary>What differs.</summary>
    public PlanDifference Difference => new(Before, Then);

    /// <summary>The uploads that are later then.</summary>
    public ValueList<UploadMove> Later => Difference.Moved.Where(move => move.IsLater).ToValueList();
}

/// <summary>A way out that could be tried.</summary>
/// <param name="Kind">Of what sort.</param>
/// <param name="Says">In words.</param>
/// <param name="Change">The change.</param>
/// <param name="Cautions">What to mind.</param>
internal sealed record RemedyIdea(RemedyKind Kind, string Says, Change Change, ValueList<Caution> Cautions);
