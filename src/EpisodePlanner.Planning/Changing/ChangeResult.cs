namespace EpisodePlanner.Planning;

/// <summary>What became of a change: <see cref="Applied"/> or <see cref="Refused"/>.</summary>
public abstract record ChangeResult
{
    private protected ChangeResult()
    {
    }
}

/// <summary>The change was made.</summary>
/// <param name="Workshop">The workshop after it.</param>
/// <param name="Inverse">The change that leads back to the workshop before it, to the byte.</param>
public sealed record Applied(Workshop Workshop, Change Inverse) : ChangeResult
{
    /// <summary>The change with all that follows from it: shots that its log entries destroyed are marked lost.</summary>
    public required Change Made { get; init; }
}

/// <summary>The change was not made.</summary>
/// <param name="Reasons">Everything that speaks against it; at least one reason.</param>
public sealed record Refused(ValueList<Reason> Reasons) : ChangeResult;
