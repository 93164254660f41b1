using EpisodePlanner.Data.Reading;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>From one version of a workshop to the next, on its way into the database.</summary>
internal sealed class Step
{
    private readonly Snapshot now;
    private readonly Intent intent;
    private readonly Change inverse;
    private readonly Tombstones deleted;

    private Step(Snapshot now, Applied applied, Intent intent, Tombstones deleted, Instant at)
    {
        (this.now, this.intent, this.deleted, At) = (now, intent, deleted, at);
        inverse = applied.Inverse;
        Changed = Aggregates.Changed(now.Workshop, applied.Workshop, intent.Change.Touches());
        After = now.Next(applied.Workshop, Changed, at);
    }

    /// <summary>The version after.</summary>
    public Snapshot After { get; }

    /// <summary>The aggregates that differ.</summary>
    public IReadOnlyList<Aggregate> Changed { get; }

    /// <summary>When.</summary>
    public Instant At { get; }

    private string Key => now.Id.ToString();

    /// <summary>The step that an intent makes.</summary>
    public static Step Of(Snapshot now, Applied applied, Intent intent, Tombstones deleted, Instant at) =>
        new(now, applied, intent, deleted, at);

    /// <summary>Raises the version, unless somebody else has.</summary>
    public async Task<bool> Claim(PlannerContext context, CancellationToken stop)
    {
        var (id, version, after, at) = (Key, now.Version, After, At);
        Instant? deletedAt = intent.DeletesWorkshop ? at : null;
        var raised = await context.Workshops
            .Where(row => row.Id == id && row.Version == version && row.DeletedAt == null)
            .ExecuteUpdateAsync(
                set => set
                    .SetProperty(row => row.Version, after.Version)
                    .SetProperty(row => row.Name, after.Workshop.Name)
                    .SetProperty(row => row.PlannedAt, after.PlannedAt)
                    .SetProperty(row => row.ChangedAt, at)
                    .SetProperty(row => row.DeletedAt, deletedAt),
                stop);
        return raised == 1;
    }

    /// <summary>Notes for the next save everything that differs.</summary>
    /// <returns>The row of the history.</returns>
    public ChangeRow Note(PlannerContext context)
    {
        var rows = new RowWriter(context, now.Id, After.Version, At, intent.Who);
        foreach (var what in Changed)
        {
            if (Aggregates.Find(After.Workshop, what) is { } value)
            {
                rows.Put(what, value, now.VersionOf(what) is not null || deleted.Find(what) is not null);
            }
            else
            {
                rows.Delete(what);
            }
        }

        NoteKey(context);
        return context.Changes.Add(Row()).Entity;
    }

    /// <summary>Does what the intent wants to be done in the same transaction.</summary>
    public Task Also(PlannerContext context) => intent.Also?.Invoke(context, After.Version) ?? Task.CompletedTask;

    private void NoteKey(PlannerContext context)
    {
        if (intent.Key is { } key)
        {
            context.RequestKeys.Add(key.Row(Key, At, Key, After.Version));
        }
    }

    private ChangeRow Row() => new()
    {
        Workshop = Key,
        Version = After.Version,
        At = At,
        Who = intent.Who,
        Act = intent.Act,
        Of = intent.Of,
        Says = intent.Says ?? ChangeWords.Say(intent.Change, now.Workshop),
        After = Bodies.Write(intent.Change),
        Before = Bodies.Write(inverse),
    };
}
