using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace EpisodePlanner.Web.Features.History;

/// <summary>What changed, undoing it and bringing back what was deleted.</summary>
internal static class HistoryEndpoints
{
    private const int PageLength = 50;
    private const string Overtaken =
        "Something was changed after this page was shown, so nothing was undone or made again. What is new is marked below; look at it and choose again.";

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapHistory(this RouteGroupBuilder desk)
    {
        desk.MapGet("/changes", Show);
        desk.MapPost("/changes/undo", Undo);
        desk.MapPost("/changes/redo", Redo);
        desk.MapPost("/changes/restore", Restore);
    }

    private static Task<IResult> Show(FoundDesk found, long? before, Desk desk, WorkshopStore store, CancellationToken stop) =>
        Page(found, before, null, null, desk, store, stop);

    private static async Task<IResult> Undo(
        FoundDesk found,
        [FromForm] long? version,
        [FromForm(Name = "base")] long? shown,
        Desk desk,
        WorkshopStore store,
        CancellationToken stop)
    {
        if (version is null && shown is null)
        {
            return Results.BadRequest();
        }

        // A change that is named is undone wherever it stands; "the last one" is the last one that the page showed.
        var expects = version is null ? new Expectation.WorkshopAt([shown!.Value]) : Expectation.None;
        return await Answer(found, await store.Undo(found.Now.Id, version, found.Who, expects, stop), shown, desk, store, stop);
    }

    private static async Task<IResult> Redo(
        FoundDesk found, [FromForm(Name = "base")] long shown, Desk desk, WorkshopStore store, CancellationToken stop) => await Answer(
        found, await store.Redo(found.Now.Id, found.Who, new Expectation.WorkshopAt([shown]), stop), shown, desk, store, stop);

    private static async Task<IResult> Restore(
        FoundDesk found, [FromForm] string kind, [FromForm] string id, Desk desk, WorkshopStore store, CancellationToken stop) =>
        ThingKinds.Find(kind) is { } known && Id.IsValid(id)
            ? await Answer(found, await store.Restore(found.Now.Id, known.Of(new Id(id)), found.Who, stop), null, desk, store, stop)
            : Results.BadRequest();

    private static async Task<IResult> Answer(
        FoundDesk found, EditOutcome outcome, long? shown, Desk desk, WorkshopStore store, CancellationToken stop) => outcome switch
        {
            Made or Unchanged => Results.LocalRedirect(Desk.After(found.Paths.Changes, outcome)),
            Stale { Things.Count: 0 } => await Page(found, null, Overtaken, shown, desk, store, stop),
            _ => await Page(found, null, OutcomeWords.Of(outcome), null, desk, store, stop),
        };

    private static async Task<IResult> Page(
        FoundDesk found, long? before, string? refused, long? shown, Desk desk, WorkshopStore store, CancellationToken stop)
    {
        var lines = await store.History(found.Now.Id, before, PageLength + 1, stop) ?? [];
        return Shown.As<HistoryPage>(
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status409Conflict,
            (nameof(HistoryPage.WorkshopName), found.Now.Workshop.Name),
            (nameof(HistoryPage.Paths), found.Paths),
            (nameof(HistoryPage.Version), before is null && lines.Count > 0 ? lines[0].Version : found.Now.Version),
            (nameof(HistoryPage.Shown), shown),
            (nameof(HistoryPage.Zone), DateTimeZoneProviders.Tzdb[found.Now.Workshop.Zone]),
            (nameof(HistoryPage.Lines), lines.Take(PageLength).ToValueList()),
            (nameof(HistoryPage.Older), lines.Count > PageLength ? lines[PageLength - 1].Version : null),
            (nameof(HistoryPage.Deleted), await store.Deleted(found.Now.Id, stop) ?? []),
            (nameof(HistoryPage.Refused), refused),
            (nameof(HistoryPage.Done), await desk.Done(found.Now.Id, found.Done, stop)));
    }
}
