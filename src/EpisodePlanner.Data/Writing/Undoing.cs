using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Writing;

/// <summary>
/// Decides what an undo or a redo does. A change is in force until it is undone, and again once it is redone; each of
/// these is a change of its own, so nothing of the history is ever altered but the mark of who undid it.
/// </summary>
internal sealed class Undoing(PlannerContext context, Snapshot now, CancellationToken stop)
{
    private IQueryable<ChangeRow> History => Reading.History.Of(context, now.Id);

    /// <summary>Takes back the change of a version, or the newest in force.</summary>
    public async Task<Decision> Undo(long? version, string who, Expectation expects)
    {
        var row = version is { } given ? await History.At(given, stop) : await NewestInForce();
        if (row is null)
        {
            return new NothingThere(version is null ? "There is no change left to undo." : $"There is no version {version}.");
        }

        return row.Act switch
        {
            Act.Begin => new NothingThere("The workshop was made with this version; delete the workshop in place of it."),
            Act.Delete => new NothingThere("The workshop was deleted with this version, and is back already."),
            Act.Restore when row.Of is not null => new NothingThere("The workshop was brought back with this version; delete it again."),
            Act.Undo => await Again(row, who, expects),
            Act.Redo => await Back(row, who, expects),
            _ => await Undo(row, who, expects),
        };
    }

    /// <summary>Makes the change again that was undone last, unless another was made since.</summary>
    public async Task<Decision> Redo(string who, Expectation expects)
    {
        var lastMade = await History.Made().MaxAsync(row => (long?)row.Version, stop) ?? 0;
        var row = await History.Where(row => row.UndoneBy > lastMade)
            .OrderByDescending(row => row.UndoneBy)
            .FirstOrDefaultAsync(stop);
        return row is null ? new NothingThere("There is no change to make again.") : await Redo(row, who, expects);
    }

    private Task<ChangeRow?> NewestInForce() => History.Made()
        .Where(row => row.UndoneBy == null)
        .OrderByDescending(row => row.Version)
        .FirstOrDefaultAsync(stop);

    /// <summary>The undo of an undo makes the change again.</summary>
    private async Task<Decision> Again(ChangeRow undo, string who, Expectation expects) =>
        await History.At(undo.Of!.Value, stop) is { } row && row.UndoneBy == undo.Version
            ? await Redo(row, who, expects)
            : new NothingThere($"Version {undo.Of} was made again since.");

    /// <summary>The undo of a redo takes the change back once more.</summary>
    private async Task<Decision> Back(ChangeRow redo, string who, Expectation expects) =>
        await History.At(redo.Of!.Value, stop) is { } row
            ? await Undo(row, who, expects)
            : new NothingThere($"There is no version {redo.Of}.");

    private async Task<Decision> Undo(ChangeRow row, string who, Expectation expects)
    {
        if (row.UndoneBy is { } by)
        {
            return new NothingThere($"Version {row.Version} was taken back already, by version {by}.");
        }

        var intent = new Intent(row.ReadBefore(), who, Act.Undo)
        {
            Expects = expects,
            Of = row.Version,
            Says = $"Took back version {row.Version}: {Reading.History.Inside(row.Says)}",
            Also = (_, version) => Mark(row, version),
        };
        return await Unless(row.ReadAfter(), intent);
    }

    private async Task<Decision> Redo(ChangeRow row, string who, Expectation expects)
    {
        var intent = new Intent(row.ReadAfter(), who, Act.Redo)
        {
            Expects = expects,
            Of = row.Version,
            Says = $"Made version {row.Version} again: {Reading.History.Inside(row.Says)}",
            Also = (_, _) => Mark(row, null),
        };
        return await Unless(row.ReadBefore(), intent);
    }

    /// <summary>The intent, unless something that a change touched is not as that change left it.</summary>
    private async Task<Decision> Unless(Change left, Intent intent)
    {
        var changed = Aftermath.ChangedSince(left, now.Workshop);
        if (changed.Count == 0)
        {
            return intent;
        }

        var deleted = await Tombstones.Of(context, now.Id, changed.Where(what => now.VersionOf(what) is null), stop);
        return Expecting.Stale(now, changed, deleted);
    }

    private Task<int> Mark(ChangeRow row, long? undoneBy)
    {
        var (workshop, version) = (row.Workshop, row.Version);
        return context.Changes.Where(change => change.Workshop == workshop && change.Version == version)
            .ExecuteUpdateAsync(set => set.SetProperty(change => change.UndoneBy, undoneBy), stop);
    }
}
