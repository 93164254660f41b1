using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>The page on which changes are supposed.</summary>
internal static class SupposePageEndpoints
{
    private const int LongestName = 200;

    /// <summary>Maps it beneath a workshop.</summary>
    public static void MapSupposePage(this RouteGroupBuilder desk)
    {
        desk.MapGet("/suppose", Show);
        desk.MapPost("/suppose", Begin);
        desk.MapPost("/suppose/{id}", Act);
    }

    private static async Task<IResult> Show(
        FoundDesk found,
        [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted,
        Desk desk,
        SupposeDesk supposes,
        CancellationToken stop)
    {
        var view = (await desk.View(found.Now, found.Done, stop)) with { IsUnnoted = unnoted is not null };
        return await Page(found, view, new SupposeForms(view.Plan, _ => "").All(), StatusCodes.Status200OK, supposes, stop);
    }

    /// <summary>Begins a draft; a form with something wrong comes back as it was sent.</summary>
    private static async Task<IResult> Begin(
        FoundDesk found, [FromForm] SupposeKind kind, IFormCollection sent, Desk desk, SupposeDesk supposes, SupposeStore store, CancellationToken stop)
    {
        var view = await desk.View(found.Now, null, stop);
        var forms = new SupposeForms(view.Plan, name => sent[name].ToString());
        if (forms.Read(kind) is { } supposition)
        {
            var name = supposition.Says[..Math.Min(LongestName, supposition.Says.Length)];
            var changes = supposition.Change as Batch ?? new Batch([supposition.Change]);
            await store.Put(found.Now.Id, new SupposeDraft(null, [], name, found.Now.Version, changes, found.Who, null), stop);
            return Results.LocalRedirect(found.Paths.Suppose);
        }

        return await Page(found, view, forms.All(), StatusCodes.Status422UnprocessableEntity, supposes, stop);
    }

    private static async Task<IResult> Act(
        FoundDesk found, string id, [FromForm] string? act, [FromForm] long version, SupposeStore store, CancellationToken stop)
    {
        var suppose = Id.IsValid(id) ? await store.Find(found.Now.Id, new Id(id), stop) : null;
        var isShown = suppose is not null && suppose.Version == version;
        var unnoted = $"{found.Paths.Suppose}?{FoundDesk.NotNotedQuery}=yes";
        if (!isShown)
        {
            return Results.LocalRedirect(unnoted);
        }

        switch (act)
        {
            case "keep":
                var outcome = await store.Keep(found.Now.Id, suppose!.Id, found.Who, stop);
                return Results.LocalRedirect(outcome is Made or Unchanged ? Desk.After(found.Paths.Suppose, outcome) : unnoted);
            case "renew":
                var draft = new SupposeDraft(suppose!.Id, [version], suppose.Name, found.Now.Version, suppose.Changes, found.Who, null);
                return Results.LocalRedirect((await store.Put(found.Now.Id, draft, stop)).IsStale ? unnoted : found.Paths.Suppose);
            case "drop":
                return Results.LocalRedirect((await store.Drop(found.Now.Id, suppose!.Id, [version], stop)).IsStale ? unnoted : found.Paths.Suppose);
            default:
                return Results.LocalRedirect(found.Paths.Suppose);
        }
    }

    private static async Task<IResult> Page(
        FoundDesk found, DeskView view, ValueList<SupposeForm> forms, int status, SupposeDesk supposes, CancellationToken stop) =>
        Shown.As<SupposePage>(
            status,
            (nameof(SupposePage.View), view),
            (nameof(SupposePage.Drafts), await supposes.All(found.Now, stop)),
            (nameof(SupposePage.Forms), forms));
}
