using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>What must be so in the store for a change to be made; checked in the transaction that makes it.</summary>
public abstract record Expectation
{
    private protected Expectation()
    {
    }

    /// <summary>Nothing but the rules of the workshop.</summary>
    public static Expectation None { get; } = new Nothing();

    /// <summary>An aggregate exists and has one of these versions.</summary>
    /// <param name="What">The aggregate.</param>
    /// <param name="Versions">The versions that will do; any where the list is empty.</param>
    public sealed record Present(Aggregate What, ValueList<long> Versions) : Expectation;

    /// <summary>An aggregate does not exist yet.</summary>
    /// <param name="What">The aggregate.</param>
    public sealed record Absent(Aggregate What) : Expectation;

    /// <summary>The whole workshop has one of these versions.</summary>
    /// <param name="Versions">The versions that will do; any where the list is empty.</param>
    public sealed record WorkshopAt(ValueList<long> Versions) : Expectation;

    /// <summary>Nothing that the change touches was changed after this version of the workshop.</summary>
    /// <param name="Version">The version the change was made from.</param>
    public sealed record UntouchedSince(long Version) : Expectation;

    private sealed record Nothing : Expectation;
}
