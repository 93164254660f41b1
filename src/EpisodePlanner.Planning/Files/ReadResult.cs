using System.Diagnostics.CodeAnalysis;

namespace EpisodePlanner.Planning.Files;

/// <summary>What came of reading a document: the thing, or every reason why not.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
public sealed record ReadResult<T>
    where T : class
{
    internal ReadResult(T thing) => Thing = thing;

    internal ReadResult(ValueList<Reason> reasons) => Reasons = reasons;

    /// <summary>The thing, where it could be read.</summary>
    public T? Thing { get; }

    /// <summary>Everything that is wrong; empty where the thing could be read.</summary>
    public ValueList<Reason> Reasons { get; } = [];

    /// <summary>Whether the thing could be read.</summary>
    [MemberNotNullWhen(true, nameof(Thing))]
    public bool IsRead => Thing is not null;
}
