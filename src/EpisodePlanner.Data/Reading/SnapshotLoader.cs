using System.Collections.Immutable;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Reading;

/// <summary>Puts a workshop together from its rows. What was sound when it was written is not checked again.</summary>
internal sealed class SnapshotLoader(Storage storage)
{
    /// <summary>The workshop as it is stored now; null where there is none, or it was deleted.</summary>
    /// <exception cref="StorageTroubleException">A row is damaged.</exception>
    public async Task<DatedSnapshot?> Load(PlannerContext context, Id workshop, CancellationToken stop)
    {
        // One transaction, so that all rows are of one version.
        await using var reading = await storage.BeginReading(context, stop);
        var key = workshop.ToString();
        var head = await context.Workshops.AsNoTracking()
            .SingleOrDefaultAsync(row => row.Id == key && row.DeletedAt == null, stop);
        if (head is null)
        {
            return null;
        }

        List<AggregateRow> rows = [];
        foreach (var table in Tables.All)
        {
            rows.AddRange(await table.Living(context, key, stop));
        }

        var whole = Assemble(key, rows);
        var versions = rows.ToImmutableDictionary(row => row.What, row => row.Version);
        return new DatedSnapshot(new Snapshot(workshop, whole, head.Version, head.PlannedAt, versions), head.ChangedAt);
    }

    private static Workshop Assemble(string id, List<AggregateRow> rows)
    {
        var values = rows.ConvertAll(row => row.Read());
        var about = values.OfType<AboutBody>().FirstOrDefault() ?? throw StorageTroubleException.Damaged(
            $"'{Aggregate.About}' of workshop {id}", [new Reason("$", "It is missing.")]);
        var workshop = about.Begin() with
        {
            Settings = values.OfType<Settings>().FirstOrDefault() ?? new Settings(),
            Accepted = values.OfType<AcceptedPlan>().FirstOrDefault(),
        };
        var things = values.OfType<IThing>().ToLookup(thing => thing.GetType());
        return ThingKinds.All.Aggregate(workshop, (whole, kind) => kind.With(whole, things[kind.Type]));
    }
}
