using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning;

/// <summary>One of the workshop's sets of things, whatever their type: how they are found, changed, read and written.</summary>
public abstract class ThingKind
{
    private readonly Spot spot;

    private protected ThingKind(string name, string word)
    {
        (Name, Word) = (name, word);
        spot = Spot.Root.Member(name);
    }

    /// <summary>The set's member in the workshop file: "people", "slotRules".</summary>
    public string Name { get; }

    /// <summary>One of its things, in a sentence: "person", "slot rule".</summary>
    public string Word { get; }

    /// <summary>The type of the things.</summary>
    public abstract Type Type { get; }

    /// <summary>The aggregate of a thing of this kind.</summary>
    public Aggregate Of(Id id) => new(Name, id);

    /// <summary>The things of a workshop, by id.</summary>
    public abstract IReadOnlyCollection<IThing> All(Workshop workshop);

    /// <summary>A thing of a workshop, or null.</summary>
    public abstract IThing? Find(Workshop workshop, Id id);

    /// <summary>The change that adds a thing or puts it in the place of the one with its id.</summary>
    /// <param name="thing">A thing of <see cref="Type"/>.</param>
    public abstract Change Put(IThing thing);

    /// <summary>The change that removes a thing.</summary>
    public abstract Change Remove(Id id);

    /// <summary>The workshop with these things, and no others of this kind.</summary>
    /// <param name="workshop">The workshop; its rules aren't looked at.</param>
    /// <param name="things">Things of <see cref="Type"/>; of two with one id the later stays.</param>
    public abstract Workshop With(Workshop workshop, IEnumerable<IThing> things);

    /// <summary>Reads a thing as <see cref="WorkshopFile.Read{T}(ReadOnlyMemory{byte})"/> does; null, with reasons, where it is none.</summary>
    public abstract IThing? Read(ReadOnlyMemory<byte> body, out ValueList<Reason> reasons);

    /// <summary>Reads a thing as <see cref="WorkshopFile.ReadStored{T}"/> does; null, with reasons, where it is damaged.</summary>
    public abstract IThing? ReadStored(ReadOnlyMemory<byte> body, out ValueList<Reason> reasons);

    /// <summary>The bytes of a thing, as <see cref="WorkshopFile.WriteShort{T}"/> writes them.</summary>
    public abstract byte[] Write(IThing thing);

    /// <summary>
    /// A thing read on its own, as it can join a workshop: with this id where it has none, and an id for each part that
    /// has none.
    /// </summary>
    public abstract IThing Complete(IThing thing, Id id, Workshop workshop);

    /// <summary>Where the thing with this id is, for reasons.</summary>
    internal Spot At(Id id) => spot.Thing(id, $"{Word} '{id}'");
}

/// <summary>One of the workshop's sets of things.</summary>
/// <typeparam name="T">The type of the things.</typeparam>
public sealed class ThingKind<T> : ThingKind
    where T : class, IThing
{
    private readonly Func<Workshop, Keyed<T>> get;
    private readonly Func<Workshop, Keyed<T>, Workshop> put;
    private readonly Func<Id, T?, Change> change;

    internal ThingKind(
        string name,
        string word,
        Func<Workshop, Keyed<T>> get,
        Func<Workshop, Keyed<T>, Workshop> put,
        Func<Id, T?, Change> change)
        : base(name, word) => (this.get, this.put, this.change) = (get, put, change);

    /// <inheritdoc/>
    public override Type Type => typeof(T);

    /// <summary>The set of a workshop.</summary>
    public Keyed<T> Get(Workshop workshop) => get(workshop);

    /// <inheritdoc/>
    public override IReadOnlyCollection<IThing> All(Workshop workshop) => get(workshop);

    /// <inheritdoc/>
    public override IThing? Find(Workshop workshop, Id id) => get(workshop).Find(id);

    /// <inheritdoc/>
    public override Change Put(IThing thing) => change(thing.Id, (T)thing);

    /// <inheritdoc/>
    public override Change Remove(Id id) => change(id, null);

    /// <inheritdoc/>
    public override Workshop With(Workshop workshop, IEnumerable<IThing> things) =>
        put(workshop, things.Cast<T>().ToKeyed());

    /// <inheritdoc/>
    public override IThing? Read(ReadOnlyMemory<byte> body, out ValueList<Reason> reasons)
    {
        var read = WorkshopFile.Read<T>(body);
        reasons = read.Reasons;
        return read.Thing;
    }

    /// <inheritdoc/>
    public override IThing? ReadStored(ReadOnlyMemory<byte> body, out ValueList<Reason> reasons)
    {
        var read = WorkshopFile.ReadStored<T>(body);
        reasons = read.Reasons;
        return read.Thing;
    }

    /// <inheritdoc/>
    public override byte[] Write(IThing thing) => WorkshopFile.WriteShort((T)thing);

    /// <inheritdoc/>
    public override IThing Complete(IThing thing, Id id, Workshop workshop) =>
        ImportCompletion.Complete((T)thing, id, workshop);

    /// <summary>The workshop with another set.</summary>
    internal Workshop Put(Workshop workshop, Keyed<T> to) => put(workshop, to);

    /// <summary>The change to a thing; null removes it.</summary>
    internal Change ChangeTo(Id id, T? to) => change(id, to);
}
