using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Reading;

/// <summary>Reads drafts.</summary>
internal static class SupposeRows
{
    /// <summary>The drafts of a workshop.</summary>
    public static IQueryable<SupposeRow> Of(PlannerContext context, Id workshop)
    {
        var key = workshop.ToString();
        return context.Supposes.AsNoTracking().Where(row => row.Workshop == key);
    }

    /// <summary>A draft, or null.</summary>
    public static Task<SupposeRow?> Find(PlannerContext context, Id workshop, Id suppose, CancellationToken stop)
    {
        var id = suppose.ToString();
        return Of(context, workshop).SingleOrDefaultAsync(row => row.Id == id, stop);
    }

    /// <summary>The draft that a row holds.</summary>
    /// <exception cref="StorageTroubleException">The row is damaged.</exception>
    public static Suppose Read(SupposeRow row)
    {
        var changes = Bodies.ReadChange(row.Changes, $"of draft {row.Id} of workshop {row.Workshop}");
        return new Suppose(
            new Id(row.Id), row.Version, row.Name, row.Base, changes as Batch ?? new Batch([changes]), row.Who, row.At);
    }
}
