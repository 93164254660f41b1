using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>What the rows of all aggregates share.</summary>
internal abstract class AggregateRow
{
    public required string Workshop { get; set; }

    public required string Id { get; set; }

    /// <summary>Who added it first.</summary>
    public required string Owner { get; set; }

    /// <summary>The workshop's version at which it was changed or deleted last.</summary>
    public long Version { get; set; }

    public Instant? DeletedAt { get; set; }

    /// <summary>The aggregate that the row holds.</summary>
    public abstract Aggregate What { get; }

    /// <summary>What it is called, for lists.</summary>
    public abstract string Title { get; }

    /// <summary>The name of the aggregate's kind.</summary>
    protected abstract string KindName { get; }

    /// <summary>Takes the members of a thing, or of a single.</summary>
    public abstract void Hold(object value);

    /// <summary>The thing or single that the row holds.</summary>
    /// <exception cref="StorageTroubleException">What is stored is damaged.</exception>
    public object Read()
    {
        try
        {
            _ = What;
            return Value();
        }
        catch (ArgumentException damaged)
        {
            throw StorageTroubleException.Damaged(
                $"'{KindName}/{Id}' of workshop {Workshop}", [new Reason("$", damaged.Message)]);
        }
    }

    /// <summary>The thing or single, unless a column holds what can't be.</summary>
    protected abstract object Value();
}
