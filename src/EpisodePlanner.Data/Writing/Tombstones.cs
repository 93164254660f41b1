using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Writing;

/// <summary>The deleted aggregates among some that do not exist in a workshop.</summary>
internal sealed class Tombstones
{
    private readonly Dictionary<Aggregate, AggregateRow> rows;

    private Tombstones(IEnumerable<AggregateRow> rows) => this.rows = rows.ToDictionary(row => row.What);

    /// <summary>Those of the aggregates that were deleted and not forgotten.</summary>
    public static async Task<Tombstones> Of(
        PlannerContext context, Id workshop, IEnumerable<Aggregate> absent, CancellationToken stop)
    {
        var wanted = absent.ToHashSet();
        List<AggregateRow> found = [];
        foreach (var table in wanted.Select(what => Tables.Of(what.Kind)).Distinct())
        {
            found.AddRange(await table.Deleted(context, workshop.ToString(), stop));
        }

        return new Tombstones(found.Where(row => wanted.Contains(row.What)));
    }

    /// <summary>The row of a deleted aggregate, or null.</summary>
    public AggregateRow? Find(Aggregate what) => rows.GetValueOrDefault(what);
}
