using System.Diagnostics.CodeAnalysis;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data;

/// <summary>A database of some provider: opens it, prepares it, and says in its own words what is wrong with it.</summary>
public abstract class Storage
{
    private volatile bool isPrepared;

    /// <summary>Whether the database takes one writer at a time, so that writers of this process had better queue up.</summary>
    public abstract bool HasOneWriter { get; }

    /// <summary>Whether <see cref="Prepare"/> has ended well.</summary>
    public bool IsPrepared => isPrepared;

    /// <summary>A new context; whoever asks for it disposes of it.</summary>
    public abstract PlannerContext Open();

    /// <summary>Creates the database where it is missing and brings its tables to this version's; may be called again.</summary>
    /// <exception cref="StorageTroubleException">It can't be done now, or not by this version.</exception>
    public async Task Prepare(CancellationToken stop)
    {
        await Run(
            async context =>
            {
                await Migrate(context, stop);
                return true;
            },
            stop);
        isPrepared = true;
    }

    /// <summary>Asks the database for a sign of life.</summary>
    /// <exception cref="StorageTroubleException">It can't do its work now.</exception>
    public Task Probe(CancellationToken stop) => Use(context => context.Workshops.AnyAsync(stop), stop);

    /// <summary>Does a piece of work with the prepared database.</summary>
    internal Task<T> Use<T>(Func<PlannerContext, Task<T>> work, CancellationToken stop) => isPrepared
        ? Run(work, stop)
        : Task.FromException<T>(new StorageTroubleException(
            StorageTrouble.NotReady, "The database is not ready yet; it is being prepared. Try again in a moment."));

    /// <summary>Begins a transaction that sees one state of the database and does not hold up writers; it ends when disposed of.</summary>
    protected internal abstract Task<IAsyncDisposable> BeginReading(PlannerContext context, CancellationToken stop);

    /// <summary>What an exception of the provider means; null where it is none, or a mistake of ours.</summary>
    protected abstract StorageTroubleException? Explain(Exception exception);

    /// <summary>Brings the tables to this version's.</summary>
    protected virtual async Task Migrate(PlannerContext context, CancellationToken stop)
    {
        var applied = await context.Database.GetAppliedMigrationsAsync(stop);
        var known = context.Database.GetMigrations().ToHashSet();
        if (applied.FirstOrDefault(migration => !known.Contains(migration)) is { } newer)
        {
            throw new StorageTroubleException(
                StorageTrouble.Newer,
                $"The database was written by a newer version of the planner: this one does not know its step '{newer}'. "
                    + "Start the newer version, or bring the database back from a copy made before.");
        }

        if (known.Count > applied.Count())
        {
            await context.Database.MigrateAsync(stop);
        }
    }

    private async Task<T> Run<T>(Func<PlannerContext, Task<T>> work, CancellationToken stop)
    {
        try
        {
            await using var context = Open();
            return await work(context);
        }
        catch (Exception thrown) when (!stop.IsCancellationRequested && TryExplain(thrown, out var trouble))
        {
            throw trouble;
        }
    }

    /// <summary>The first of an exception and its causes that the provider can explain.</summary>
    private bool TryExplain(Exception thrown, [NotNullWhen(true)] out StorageTroubleException? trouble)
    {
        trouble = null;
        for (Exception? cause = thrown; cause is not null and not StorageTroubleException; cause = cause.InnerException)
        {
            trouble ??= Explain(cause);
        }

        return trouble is not null;
    }
}
