namespace EpisodePlanner.Planning;

/// <summary>What a whole plan is judged by, in whole numbers: see <see cref="PlanWeights"/>.</summary>
public sealed record PlanAims
{
    /// <summary>What the plan weighs.</summary>
    public required PlanWeights Reached { get; init; }

    /// <summary>Stages whose finish is needed by a minute.</summary>
    public required ValueList<AskedDate> NeededBy { get; init; }

    /// <summary>Episodes whose public minute is wanted by a minute: told dates and pinned slots.</summary>
    public required ValueList<AskedDate> PublicBy { get; init; }

    /// <summary>Stages with an accepted start.</summary>
    public required ValueList<AskedDate> Accepted { get; init; }

    /// <summary>By series, by position.</summary>
    public required ValueList<AskedPromise> Promises { get; init; }

    /// <summary>The channel's promise.</summary>
    public required AskedPromise Channel { get; init; }

    /// <summary>The last day of the plan.</summary>
    public required int LastDay { get; init; }
}

/// <summary>Something with a minute.</summary>
/// <param name="Index">A stage or an episode.</param>
/// <param name="Minute">The minute.</param>
public sealed record AskedDate(int Index, int Minute);

/// <summary>A promise of a longest silence.</summary>
/// <param name="SilentFrom">The day from which silence counts.</param>
/// <param name="LongestSilence">Days; null where the promise is of another kind, whose silences then weigh nothing here.</param>
public sealed record AskedPromise(int SilentFrom, int? LongestSilence);
