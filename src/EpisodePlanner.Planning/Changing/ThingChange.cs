using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning;

/// <summary>A change to a thing, whatever its type.</summary>
internal interface IThingChange
{
    /// <summary>The thing.</summary>
    Id Id { get; }

    /// <summary>The thing as it shall be, or null.</summary>
    IThing? To { get; }

    /// <summary>The set that the thing belongs to.</summary>
    ThingKind Set { get; }

    /// <summary>How the change is written, under the name of its kind.</summary>
    IChangeForm Form(string kind);
}

/// <summary>Adds a thing, puts it in the place of the one with its id, or removes it.</summary>
/// <param name="Id">The thing.</param>
/// <param name="To">The thing as it shall be; null removes it.</param>
/// <typeparam name="T">The kind of thing.</typeparam>
public abstract record ThingChange<T>(Id Id, T? To) : Change, IThingChange
    where T : class, IThing
{
    private protected abstract ThingKind<T> Kind { get; }

    /// <inheritdoc/>
    public sealed override IEnumerable<Aggregate> Touches() => [Kind.Of(Id)];

    ThingKind IThingChange.Set => Kind;

    IThing? IThingChange.To => To;

    IChangeForm IThingChange.Form(string kind) => new ThingForm<T> { Kind = kind, Id = Id, To = To, Remove = To is null };

    internal sealed override Step? Take(Workshop workshop, ReasonList reasons)
    {
        var things = Kind.Get(workshop);
        var before = things.Find(Id);
        if (Objection(before, things) is { } objection)
        {
            reasons.Add(Kind.At(Id), objection);
            return null;
        }

        var after = To is null ? things.Without(Id) : things.With(To);
        return new Step(Kind.Put(workshop, after), Inverse(before));
    }

    private protected virtual Change Inverse(T? before) => this with { To = before };

    private protected virtual string? Objection(T? before, Keyed<T> things)
    {
        if (To is not null)
        {
            return To.Id == Id
                ? null
                : $"The change is to '{Id}', but its {Kind.Word} has the id '{To.Id}'; make them the same.";
        }

        return before is null ? $"There is no {Kind.Word} '{Id}' to remove{Nearest(things)}." : null;
    }

    private string Nearest(Keyed<T> things)
    {
        var nearest = new Nearest().To(Id.ToString(), things.Select(thing => thing.Id.ToString()));
        return nearest is null ? "" : $"; the nearest is '{nearest}'";
    }
}
