using System.Text.Json.Nodes;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>The forms of all things.</summary>
internal static class EditEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapEditing(this RouteGroupBuilder desk)
    {
        desk.MapGet("/edit/{kind}/{id}", Show);
        desk.MapPost("/edit/{kind}/{id}", Save);
        desk.MapPost("/edit/{kind}/{id}/delete", Delete);
        desk.MapGet("/new/{kind}", New);
    }

    private static async Task<IResult> Show(
        FoundDesk found, string kind, string id, Desk desk, WorkshopStore store, CancellationToken stop)
    {
        if (Find(kind, id) is not var (known, thing))
        {
            return Results.LocalRedirect(found.Paths.Now);
        }

        if (known.Find(found.Now.Workshop, thing) is null)
        {
            return await Gone(found, known, thing, store, stop);
        }

        var model = Editor.Show(found, new EditableThing(known, thing), found.Paths.Edit(known, thing));
        return Shown.As<EditPage>((nameof(EditPage.Model), model with { Done = await desk.Done(found.Now.Id, found.Done, stop) }));
    }

    private static async Task<IResult> Save(
        FoundDesk found, string kind, string id, IFormCollection form, Editor editor, CancellationToken stop)
    {
        if (Find(kind, id) is not var (known, thing))
        {
            return Results.LocalRedirect(found.Paths.Now);
        }

        return Answer(await editor.Save(
            found, new EditableThing(known, thing), found.Paths.Edit(known, thing), new SentForm(form), stop));
    }

    private static async Task<IResult> Delete(
        FoundDesk found, string kind, string id, IFormCollection form, Editor editor, CancellationToken stop)
    {
        if (Find(kind, id) is not var (known, thing))
        {
            return Results.LocalRedirect(found.Paths.Now);
        }

        return Answer(await editor.Remove(
            found, new EditableThing(known, thing), found.Paths.Edit(known, thing), new SentForm(form).Version, stop));
    }

    /// <summary>The form of a new thing: its address holds its id, so that a form sent twice adds one thing.</summary>
    private static IResult New(FoundDesk found, string kind, string? series, IdSource ids, TimeProvider clock)
    {
        if (ThingKinds.Find(kind) is not { } known)
        {
            return Results.LocalRedirect(found.Paths.Now);
        }

        var id = ids.Next();
        var prefilled = Prefilled(known, series, found.Now.Workshop, clock);
        return Shown.As<EditPage>(
            (nameof(EditPage.Model), Editor.Show(found, new EditableThing(known, id), found.Paths.Edit(known, id), prefilled)));
    }

    /// <summary>The result of a saving or removal.</summary>
    public static IResult Answer((string? Path, EditModel? Form) result) => result.Path is { } path
        ? Results.LocalRedirect(path)
        : Shown.As<EditPage>(
            result.Form!.Problems.Count > 0 ? StatusCodes.Status422UnprocessableEntity
                : result.Form.Overtaken is not null ? StatusCodes.Status409Conflict
                : StatusCodes.Status200OK,
            (nameof(EditPage.Model), result.Form));

    private static JsonObject Prefilled(ThingKind kind, string? series, Workshop workshop, TimeProvider clock)
    {
        var zone = DateTimeZoneProviders.Tzdb[workshop.Zone];
        var now = Instant.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds());
        var today = LocalDatePattern.Iso.Format(now.InZone(zone).Date);
        var document = new JsonObject();
        if (series is not null && (kind == ThingKinds.Episodes || kind == ThingKinds.Uploads || kind == ThingKinds.Tasks))
        {
            document["series"] = series;
        }

        if (kind == ThingKinds.Log)
        {
            document["at"] = InstantPattern.ExtendedIso.Format(now);
        }
        else if (kind == ThingKinds.Uploads)
        {
            document["date"] = today;
        }
        else if (kind == ThingKinds.ToldDates)
        {
            document["toldOn"] = today;
        }
        else if (kind == ThingKinds.SlotRules)
        {
            (document["from"], document["at"], document["rule"]) = (today, "18:00", "FREQ=WEEKLY;BYDAY=FR");
        }

        return document;
    }

    private static async Task<RazorComponentResult<GonePage>> Gone(
        FoundDesk found, ThingKind kind, Id id, WorkshopStore store, CancellationToken stop)
    {
        var deleted = (await store.Deleted(found.Now.Id, stop) ?? []).FirstOrDefault(thing => thing.What == kind.Of(id));
        return Shown.As<GonePage>(
            deleted is null ? StatusCodes.Status404NotFound : StatusCodes.Status410Gone,
            (nameof(GonePage.WorkshopName), found.Now.Workshop.Name),
            (nameof(GonePage.Paths), found.Paths),
            (nameof(GonePage.Word), kind.Word),
            (nameof(GonePage.Zone), DateTimeZoneProviders.Tzdb[found.Now.Workshop.Zone]),
            (nameof(GonePage.Deleted), deleted));
    }

    private static (ThingKind Kind, Id Id)? Find(string kind, string id) =>
        ThingKinds.Find(kind) is { } known && Id.IsValid(id) ? (known, new Id(id)) : null;
}
