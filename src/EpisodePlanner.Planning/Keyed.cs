using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace EpisodePlanner.Planning;

/// <summary>An immutable set of things by id, enumerated in the order of their ids; one change copies little.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
[CollectionBuilder(typeof(Keyed), nameof(Keyed.Create))]
public sealed class Keyed<T> : IReadOnlyCollection<T>, IEquatable<Keyed<T>>
    where T : class, IThing
{
    private readonly ImmutableSortedDictionary<Id, T> things;

    internal Keyed(ImmutableSortedDictionary<Id, T> things) => this.things = things;

    /// <inheritdoc/>
    public int Count => things.Count;

    /// <summary>The thing with this id, or null.</summary>
    public T? Find(Id id) => things.GetValueOrDefault(id);

    /// <summary>The thing with this id, where there is one.</summary>
    public bool TryFind(Id id, [NotNullWhen(true)] out T? thing) => things.TryGetValue(id, out thing);

    /// <summary>Whether a thing with this id is there.</summary>
    public bool Contains(Id id) => things.ContainsKey(id);

    /// <summary>The set with this thing added, or put in the place of the one with its id.</summary>
    public Keyed<T> With(T thing) => new(things.SetItem(thing.Id, thing));

    /// <summary>The set without the thing of this id.</summary>
    public Keyed<T> Without(Id id) => new(things.Remove(id));

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => things.Values.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(Keyed<T>? other) => other is not null && Count == other.Count && this.SequenceEqual(other);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Keyed<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => Count;
}

/// <summary>Makes <see cref="Keyed{T}"/> sets.</summary>
public static class Keyed
{
    /// <summary>A set of these things; of two with one id the later stays. Collection expressions call this.</summary>
    public static Keyed<T> Create<T>(ReadOnlySpan<T> things)
        where T : class, IThing
    {
        var builder = ImmutableSortedDictionary.CreateBuilder<Id, T>();
        foreach (var thing in things)
        {
            builder[thing.Id] = thing;
        }

        return new Keyed<T>(builder.ToImmutable());
    }

    /// <summary>A set of the things of a sequence; of two with one id the later stays.</summary>
    public static Keyed<T> ToKeyed<T>(this IEnumerable<T> things)
        where T : class, IThing => Create<T>([.. things]);
}
