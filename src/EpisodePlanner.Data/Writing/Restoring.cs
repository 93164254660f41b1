using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Brings deleted things back.</summary>
internal static class Restoring
{
    /// <summary>What was deleted after a moment, the latest first.</summary>
    public static async Task<ValueList<DeletedThing>> List(
        PlannerContext context, Id workshop, Instant since, CancellationToken stop)
    {
        List<AggregateRow> rows = [];
        foreach (var table in Tables.All)
        {
            rows.AddRange(await table.Deleted(context, workshop.ToString(), stop));
        }

        return rows.Where(row => row.DeletedAt > since && ThingKinds.Find(row.What.Kind) is not null)
            .OrderByDescending(row => row.Version)
            .ThenBy(row => row.What.ToString(), StringComparer.Ordinal)
            .Select(row => new DeletedThing(
                row.What, row.Title, row.Version, row.DeletedAt!.Value, row.DeletedAt.Value + WorkshopStore.DeletedKept))
            .ToValueList();
    }

    /// <summary>Decides what the restoration of a thing does.</summary>
    public static async Task<Decision> Decide(
        PlannerContext context, Snapshot now, Aggregate what, string who, Instant since, CancellationToken stop)
    {
        if (now.VersionOf(what) is not null)
        {
            return new NothingThere($"'{what}' is there and needs not be brought back.");
        }

        var deleted = await Tombstones.Of(context, now.Id, [what], stop);
        return deleted.Find(what) is { } row && row.DeletedAt > since && row.Read() is IThing thing
            ? new Intent(ThingKinds.Find(what.Kind)!.Put(thing), who, Act.Restore)
            {
                Expects = new Expectation.Absent(what),
                Says = $"Brought back {ThingKinds.Find(what.Kind)!.Word} \u201c{row.Title}\u201d",
            }
            : new NothingThere($"'{what}' was not deleted, or longer than 30 days ago.");
    }
}
