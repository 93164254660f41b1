namespace EpisodePlanner.Planning;

/// <summary>Adds a thing, puts it in the place of the one with its id, or removes it.</summary>
/// <param name="Id">The thing.</param>
/// <param name="To">The thing as it shall be; null removes it.</param>
/// <typeparam name="T">The kind of thing.</typeparam>
public abstract record ThingChange<T>(Id Id, T? To) : Change
    where T : class, IThing
{
    private protected abstract Shelf<T> Shelf { get; }

    internal sealed override Step? Take(Workshop workshop, ReasonList reasons)
    {
        var things = Shelf.Get(workshop);
        var before = things.Find(Id);
        if (Objection(before, things) is { } objection)
        {
            reasons.Add(Shelf.At(Id), objection);
            return null;
        }

        var after = To is null ? things.Without(Id) : things.With(To);
        return new Step(Shelf.Put(workshop, after), Inverse(before));
    }

    private protected virtual Change Inverse(T? before) => this with { To = before };

    private protected virtual string? Objection(T? before, Keyed<T> things)
    {
        if (To is not null)
        {
            return To.Id == Id
                ? null
                : $"The change is to '{Id}', but its {Shelf.Word} has the id '{To.Id}'; make them the same.";
        }

        return before is null ? $"There is no {Shelf.Word} '{Id}' to remove{Nearest(things)}." : null;
    }

    private string Nearest(Keyed<T> things)
    {
        var nearest = new Nearest().To(Id.ToString(), things.Select(thing => thing.Id.ToString()));
        return nearest is null ? "" : $"; the nearest is '{nearest}'";
    }
}
