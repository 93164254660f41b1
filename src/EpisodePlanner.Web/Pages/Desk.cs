using System.Collections.Concurrent;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Pages;

/// <summary>Finds what the pages of a workshop show from.</summary>
/// <param name="store">Where workshops are.</param>
/// <param name="plans">Makes and keeps plans.</param>
/// <param name="patience">How long a page waits for what is nice to have.</param>
internal sealed class Desk(WorkshopStore store, PlanDesk plans, Patience patience)
{
    private readonly ConcurrentDictionary<Id, Newest> newest = new();

    /// <summary>The name of the query's part that tells which change was just made.</summary>
    public const string DoneQuery = "done";

    /// <summary>The workshop with its plan, ready for a page.</summary>
    /// <param name="now">The workshop.</param>
    /// <param name="done">The version of the change that was just made; null for none.</param>
    /// <param name="stop">Ends the planning.</param>
    public async Task<DeskView> View(Snapshot now, long? done, CancellationToken stop)
    {
        var made = await plans.Current(now, PlanKey.UsualSchedules, stop);
        return new DeskView(now.Id, now.Version, await made.Quick(stop)) { Done = await Done(now.Id, done, stop) };
    }

    /// <summary>The same with what further plans tell of it: what must start tonight, and how much was assumed.</summary>
    /// <param name="now">The workshop.</param>
    /// <param name="done">The version of the change that was just made; null for none.</param>
    /// <param name="wait">Whether to wait for the further plans however long they take.</param>
    /// <param name="stop">Ends the planning.</param>
    public async Task<DeskView> Weighed(Snapshot now, long? done, bool wait, CancellationToken stop)
    {
        var made = await plans.Current(now, PlanKey.UsualSchedules, stop);
        var advice = wait ? await made.Advice(stop) : await made.Advice(patience.WithTrials, Outdated(made.Key), stop);
        return new DeskView(now.Id, now.Version, advice) { Done = await Done(now.Id, done, stop) };
    }

    /// <summary>What can be done about the silence of a series, or of the channel for an empty id.</summary>
    /// <param name="now">The workshop.</param>
    /// <param name="series">The series.</param>
    /// <param name="wait">Whether to wait until everything was tried; else what was found within a moment is told.</param>
    /// <param name="stop">Ends the planning.</param>
    public async Task<SilenceRemedies?> Remedies(Snapshot now, Id series, bool wait, CancellationToken stop)
    {
        var made = await plans.Current(now, PlanKey.UsualSchedules, stop);
        return wait
            ? await made.Remedies(series, stop)
            : await made.Remedies(series, patience.WithTrials, Outdated(made.Key), stop);
    }

    /// <summary>The line of a change that was just made, to be said and to be undone; null where there is none.</summary>
    public async Task<HistoryLine?> Done(Id workshop, long? version, CancellationToken stop) =>
        version is { } known ? (await store.FindChange(workshop, known, stop))?.Line : null;

    /// <summary>What the workshop's pages show now, as a word that differs where they do.</summary>
    public async Task<string> Mark(Snapshot now, CancellationToken stop) =>
        (await plans.Current(now, PlanKey.UsualSchedules, stop)).Key.TagWith("").Tag.Value!;

    /// <summary>The path of a page after a change was made.</summary>
    public static string After(string path, EditOutcome outcome) => outcome is Made made
        ? $"{path}{(path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{DoneQuery}={made.Change.Line.Version}"
        : path;

    /// <summary>What ends the further plans of one plan: another plan of the same workshop that was shown after it.</summary>
    private CancellationToken Outdated(PlanKey key)
    {
        var mine = new Newest(key, new CancellationTokenSource());
        var kept = newest.AddOrUpdate(key.Workshop, mine, (_, there) => there.Key == key ? there : mine with { Before = there.Stop });
        kept.Before?.Cancel();
        return kept.Stop.Token;
    }

    private sealed record Newest(PlanKey Key, CancellationTokenSource Stop)
    {
        /// <summary>Of the plan before it.</summary>
        public CancellationTokenSource? Before { get; init; }
    }
}
