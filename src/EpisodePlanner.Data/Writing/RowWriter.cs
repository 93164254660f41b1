using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Notes for the next save what one change does to the rows of a workshop.</summary>
internal sealed class RowWriter(PlannerContext context, Id workshop, long version, Instant at, string who)
{
    /// <summary>Adds the row of an aggregate, or changes the one that is there, deleted or not.</summary>
    public void Put(Aggregate what, object value, bool isThere)
    {
        var row = Row(what);
        row.Hold(value);
        row.Version = version;
        var entry = context.Entry(row);
        entry.State = isThere ? EntityState.Modified : EntityState.Added;
        if (isThere)
        {
            // It stays with whoever added it first.
            entry.Property(row => row.Owner).IsModified = false;
        }
    }

    /// <summary>Marks the row of an aggregate as deleted; what it held is kept.</summary>
    public void Delete(Aggregate what)
    {
        var row = Row(what);
        row.Version = version;
        row.DeletedAt = at;
        var entry = context.Entry(row);
        entry.State = EntityState.Unchanged;
        entry.Property(row => row.Version).IsModified = true;
        entry.Property(row => row.DeletedAt).IsModified = true;
    }

    private AggregateRow Row(Aggregate what) => Tables.Of(what.Kind).Row(workshop.ToString(), what, who);
}
