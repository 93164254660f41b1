using System.Collections;
using System.Runtime.CompilerServices;

namespace EpisodePlanner.Planning;

/// <summary>An immutable list that is equal to another when its elements are equal, in order.</summary>
/// <typeparam name="T">The element; its own equality decides.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items;

    internal ValueList(T[] items) => this.items = items;

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <summary>The elements as a span, in order.</summary>
    public ReadOnlySpan<T> AsSpan() => items;

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) =>
        other is not null && items.AsSpan().SequenceEqual(other.items, EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <summary>The elements, comma-separated, for messages.</summary>
    public override string ToString() => string.Join(", ", items);
}

/// <summary>Makes <see cref="ValueList{T}"/>s.</summary>
public static class ValueList
{
    /// <summary>A list of these elements; collection expressions call this.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) =>
        items.IsEmpty ? EmptyList<T>.Instance : new ValueList<T>(items.ToArray());

    /// <summary>A list of the elements of a sequence, in its order.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => Create<T>([.. items]);

    private static class EmptyList<T>
    {
        public static readonly ValueList<T> Instance = new([]);
    }
}
