using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>What is to be supposed.</summary>
/// <param name="Id">The draft's id; null for a new one.</param>
/// <param name="Versions">
/// The versions that will do of the draft that is replaced; where the list is empty any, and a missing one is begun.
/// </param>
/// <param name="Name">What it is called.</param>
/// <param name="Base">The version of the workshop it was made from; null for the newest.</param>
/// <param name="Changes">The changes in order.</param>
/// <param name="Who">Who supposes.</param>
/// <param name="Key">Under which key a repetition of the request is known.</param>
public sealed record SupposeDraft(
    Id? Id, ValueList<long> Versions, string Name, long? Base, Batch Changes, string Who, RequestKey? Key);

/// <summary>What became of a draft.</summary>
/// <param name="Kept">The draft as it is now; null where it was dropped, or there is none.</param>
/// <param name="IsStale">Whether another version was expected.</param>
/// <param name="IsMissing">Whether there is no such draft or workshop.</param>
/// <param name="Reasons">What is wrong with the changes, tried on the workshop as it is; the draft was not stored then.</param>
public sealed record SupposeOutcome(Suppose? Kept, bool IsStale, bool IsMissing, ValueList<Reason> Reasons)
{
    /// <summary>Whether the key was used for another request before.</summary>
    public bool IsKeyReused { get; init; }

    internal static SupposeOutcome Missing { get; } = new(null, IsStale: false, IsMissing: true, []);

    internal static SupposeOutcome Reused { get; } = new(null, IsStale: false, IsMissing: false, []) { IsKeyReused = true };

    internal static SupposeOutcome Done(Suppose? kept) => new(kept, IsStale: false, IsMissing: false, []);

    internal static SupposeOutcome Stale(Suppose now) => new(now, IsStale: true, IsMissing: false, []);

    internal static SupposeOutcome Refused(Suppose? now, ValueList<Reason> reasons) =>
        new(now, IsStale: false, IsMissing: false, reasons);
}
