namespace EpisodePlanner.Planning;

/// <summary>
/// Several changes in order, made all or none. The rules hold after the last; on the way there they needn't, so that
/// things that refer to each other can come and go together.
/// </summary>
/// <param name="Changes">The changes; batches among them are unfolded.</param>
public sealed record Batch(ValueList<Change> Changes) : Change
{
    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => Unfolded().SelectMany(change => change.Touches()).Distinct();

    /// <inheritdoc/>
    public override IEnumerable<Change> Unfolded()
    {
        var left = new Stack<Change>([this]);
        while (left.TryPop(out var next))
        {
            if (next is not Batch batch)
            {
                yield return next;
                continue;
            }

            foreach (var change in batch.Changes.Reverse())
            {
                left.Push(change);
            }
        }
    }

    internal override Step? Take(Workshop workshop, ReasonList reasons)
    {
        var inverses = new Stack<Change>();
        var isWhole = true;
        foreach (var change in Unfolded())
        {
            var step = change.Take(workshop, reasons);
            isWhole &= step is not null;
            workshop = step?.After ?? workshop;
            inverses.Push(step?.Inverse ?? change);
        }

        return isWhole ? new Step(workshop, new Batch(inverses.ToValueList())) : null;
    }
}
