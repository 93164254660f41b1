using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>Why the database can't do its work now.</summary>
public enum StorageTrouble
{
    /// <summary>It can't be reached, or went away.</summary>
    Away,

    /// <summary>Somebody else holds it locked for too long.</summary>
    Locked,

    /// <summary>It can't be written to.</summary>
    ReadOnly,

    /// <summary>There is no room left.</summary>
    Full,

    /// <summary>It was written by a newer version of the planner.</summary>
    Newer,

    /// <summary>It is no database, or damaged.</summary>
    Damaged,

    /// <summary>It is not prepared yet: the migration has not run or not ended.</summary>
    NotReady,
}

/// <summary>
/// The database can't do its work now; nothing was changed. The message says what is wrong and what would help, without
/// secrets.
/// </summary>
public sealed class StorageTroubleException : Exception
{
    /// <summary>A trouble of a kind.</summary>
    /// <param name="trouble">The kind.</param>
    /// <param name="message">A sentence for people.</param>
    /// <param name="innerException">What the provider said.</param>
    public StorageTroubleException(StorageTrouble trouble, string message, Exception? innerException = null)
        : base(message, innerException) => Trouble = trouble;

    /// <summary>The kind.</summary>
    public StorageTrouble Trouble { get; }

    /// <summary>A row that can't be read.</summary>
    internal static StorageTroubleException Damaged(string row, ValueList<Reason> reasons) => new(
        StorageTrouble.Damaged,
        $"The stored row {row} is damaged: {string.Join(' ', reasons.Take(3).Select(reason => $"{reason.Where}: {reason.Says}"))} "
            + "Bring the database back from a copy.");
}
