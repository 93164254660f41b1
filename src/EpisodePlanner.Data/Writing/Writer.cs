using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Writing;

/// <summary>Decides what to do to a workshop as it is now; asked again where somebody else was quicker.</summary>
internal delegate Task<Decision> Deciding(PlannerContext context, Snapshot now, CancellationToken stop);

/// <summary>
/// Makes changes. Writers of one process take turns; against those of others the version of the workshop is raised on
/// the condition that it is still the one the change was tried on, in the transaction that writes everything else.
/// </summary>
internal sealed class Writer(Storage storage, Snapshots snapshots, TimeProvider clock)
{
    private const int MostAttempts = 100;
    private const int LongestPause = 20;

    private readonly Gates gates = new();

    /// <summary>Waits for the turn to write to a workshop, or in another scope.</summary>
    public Task<IDisposable> Enter(string scope, CancellationToken stop) =>
        gates.Enter(storage.HasOneWriter ? "" : scope, stop);

    /// <summary>Makes a change, or says why not.</summary>
    public async Task<EditOutcome> Run(Id workshop, RequestKey? key, Deciding decide, CancellationToken stop)
    {
        using var turn = await Enter(workshop.ToString(), stop);
        for (var attempt = 0; attempt < MostAttempts; attempt++)
        {
            if (await storage.Use(context => Try(context, workshop, key, decide, stop), stop) is { } outcome)
            {
                return outcome;
            }

            // Another process was quicker, and will be again if all try at the same moment.
            await Task.Delay(Math.Min(attempt, LongestPause), stop);
        }

        throw new StorageTroubleException(
            StorageTrouble.Locked, "Others change this workshop so fast that this change could not be made; try again.");
    }

    /// <summary>The change in the form in which it comes back from the store: without batches in batches, and sorted.</summary>
    public static Change Canonical(Change change) =>
        ChangeFile.Order(change is Batch ? new Batch(change.Unfolded().ToValueList()) : change);

    /// <summary>One attempt; null where somebody else was quicker.</summary>
    private async Task<EditOutcome?> Try(
        PlannerContext context, Id workshop, RequestKey? key, Deciding decide, CancellationToken stop)
    {
        var (now, deletedAt) = await snapshots.Newest(context, workshop, stop);
        if (now is null)
        {
            return new NoWorkshop(deletedAt);
        }

        if (await RequestKeys.Find(context, workshop.ToString(), key, stop) is { } earlier)
        {
            return await Repeat(context, now, earlier, key!, stop);
        }

        var decision = await decide(context, now, stop);
        return decision.Intent is { } intent
            ? await Weigh(context, now, intent with { Change = Canonical(intent.Change), Key = key }, stop)
            : decision.Outcome;
    }

    private async Task<EditOutcome?> Weigh(PlannerContext context, Snapshot now, Intent intent, CancellationToken stop)
    {
        var looked = intent.Change.Touches().Concat(Expecting.Looked(intent.Expects, intent.Change));
        var deleted = await Tombstones.Of(context, now.Id, looked.Where(what => now.VersionOf(what) is null), stop);
        if (Expecting.Check(intent.Expects, intent.Change, now, deleted) is { } stale)
        {
            return stale;
        }

        var result = Changes.Apply(now.Workshop, intent.Change);
        if (result is not Applied applied)
        {
            return new Broken(now, ((Refused)result).Reasons);
        }

        var step = Step.Of(now, applied, intent with { Change = Canonical(applied.Made) }, deleted, clock.Now());
        return step.Changed.Count > 0 || intent.IsMadeAnyway
            ? await Write(context, step, stop)
            : new Unchanged(now);
    }

    private async Task<EditOutcome?> Write(PlannerContext context, Step step, CancellationToken stop)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(stop);
        if (!await step.Claim(context, stop))
        {
            return null;
        }

        var row = step.Note(context);
        try
        {
            await step.Also(context);
            await context.SaveChangesAsync(stop);
        }
        catch (DbUpdateConcurrencyException)
        {
            // A row that was to be changed went meanwhile: a deleted thing was forgotten, a draft dropped.
            return null;
        }

        // Whoever gives up now could not know whether it was kept.
        await transaction.CommitAsync(CancellationToken.None);
        snapshots.Keep(step.After, step.At);
        return new Made(step.After, row.ToStored(), IsRepetition: false);
    }

    private static async Task<EditOutcome> Repeat(
        PlannerContext context, Snapshot now, RequestKeyRow earlier, RequestKey key, CancellationToken stop)
    {
        if (earlier.Fingerprint != key.Fingerprint || earlier.Version is not { } version)
        {
            return new KeyReused();
        }

        var row = await History.Of(context, now.Id).At(version, stop);
        return row is null ? new KeyReused() : new Made(now, row.ToStored(), IsRepetition: true);
    }
}
