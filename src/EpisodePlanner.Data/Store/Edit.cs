using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>A change that somebody asks for.</summary>
/// <param name="Change">The change.</param>
/// <param name="Who">Who asks for it: a name, 1 to 200 characters.</param>
public sealed record Edit(Change Change, string Who)
{
    /// <summary>What must be so for the change to be made.</summary>
    public Expectation Expects { get; init; } = Expectation.None;

    /// <summary>Under which key a repetition of the request is known; null where it may be made twice.</summary>
    public RequestKey? Key { get; init; }

    /// <summary>How the change came about, for the history.</summary>
    public Act Act { get; init; } = Act.Change;
}

/// <summary>The key under which a client repeats a request, and what it asked for.</summary>
/// <param name="Key">The key, 1 to 200 characters, chosen by the client; kept for a day.</param>
/// <param name="Fingerprint">A digest of the request; a repetition has the same.</param>
public sealed record RequestKey(string Key, string Fingerprint);

/// <summary>How a change came about.</summary>
public enum Act
{
    /// <summary>Somebody made it.</summary>
    Change,

    /// <summary>It took back an earlier one.</summary>
    Undo,

    /// <summary>It made one again that was taken back.</summary>
    Redo,

    /// <summary>It came with a file.</summary>
    Import,

    /// <summary>It brought back something deleted.</summary>
    Restore,

    /// <summary>It was a draft that was kept.</summary>
    Keep,

    /// <summary>The workshop was made.</summary>
    Begin,

    /// <summary>The workshop was deleted.</summary>
    Delete,
}
