namespace EpisodePlanner.Planning;

/// <summary>
/// Adds a told date. Told dates are kept for ever: removing or altering one is refused. Only the undo of the addition
/// itself takes it away again, as <see cref="ToldDateTakenBack"/>.
/// </summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record ToldDateChange(Id Id, ToldDate? To) : ThingChange<ToldDate>(Id, To)
{
    private protected override ThingKind<ToldDate> Kind => ThingKinds.ToldDates;

    private protected override Change Inverse(ToldDate? before) =>
        before is null ? new ToldDateTakenBack(To!) : base.Inverse(before);

    private protected override string? Objection(ToldDate? before, Keyed<ToldDate> things) =>
        before is not null && before != To
            ? "A told date is kept for ever, as it was said; leave it, and add the new date beside it."
            : base.Objection(before, things);
}

/// <summary>
/// The undo of adding a told date: a slip of the finger, nothing that anybody was told. It holds the whole told date
/// and takes back only one that is still just that; the history of changes keeps both. Outside this assembly it comes
/// into being only as the inverse of an addition, or when a stored change is read.
/// </summary>
public sealed record ToldDateTakenBack : Change
{
    internal ToldDateTakenBack(ToldDate was) => Was = was;

    /// <summary>The told date that is taken back.</summary>
    public ToldDate Was { get; }

    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => [ThingKinds.ToldDates.Of(Was.Id)];

    internal override Step? Take(Workshop workshop, ReasonList reasons)
    {
        if (workshop.ToldDates.Find(Was.Id) != Was)
        {
            reasons.Add(
                ThingKinds.ToldDates.At(Was.Id),
                "Only a told date that is still as it was added can be taken back; leave it.");
            return null;
        }

        var after = workshop with { ToldDates = workshop.ToldDates.Without(Was.Id) };
        return new Step(after, new ToldDateChange(Was.Id, Was));
    }
}
