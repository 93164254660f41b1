using System.Globalization;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>The page on which a series is rested openly, or finished.</summary>
internal static class RestEndpoints
{
    /// <summary>Maps it beneath a workshop.</summary>
    public static void MapRest(this RouteGroupBuilder desk)
    {
        desk.MapGet("/series/{id}/rest", Show);
        desk.MapPost("/series/{id}/rest", Take);
    }

    private static async Task<IResult> Show(
        FoundDesk found,
        string id,
        string? until,
        string? finish,
        [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted,
        Desk desk,
        PlanDesk plans,
        CancellationToken stop)
    {
        if (!Id.IsValid(id) || found.Now.Workshop.Series.Find(new Id(id)) is not { State: not SeriesState.Finished } series)
        {
            return Results.LocalRedirect(found.Paths.Series);
        }

        var view = await desk.View(found.Now, found.Done, stop);
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var (day, problem) = Day(until, view.Plan.Now.Date);
        var pause = finish is not null || day is not null ? await made.Pause(series.Id, finish is null ? day : null, stop) : null;
        return Shown.As<RestPage>(
            problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity,
            (nameof(RestPage.View), view with { IsUnnoted = unnoted is not null }),
            (nameof(RestPage.Series), series),
            (nameof(RestPage.Until), Field(finish is null ? until : null, problem)),
            (nameof(RestPage.Pause), pause));
    }

    private static async Task<IResult> Take(
        FoundDesk found, string id, [FromForm] string? until, [FromForm(Name = "base")] long version, PlanDesk plans, WorkshopStore store, CancellationToken stop)
    {
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var (day, problem) = Day(until, made.Plan.Now.Date);
        var pause = problem is null && Id.IsValid(id) ? await made.Pause(new Id(id), day, stop) : null;
        var outcome = pause is null
            ? null
            : await store.Make(
                found.Now.Id, new Edit(pause.Supposition.Change, found.Who) { Expects = new Expectation.UntouchedSince(version) }, stop);
        return Results.LocalRedirect(outcome is Made or Unchanged
            ? Desk.After(found.Paths.OfSeries(new Id(id)), outcome)
            : $"{(Id.IsValid(id) ? found.Paths.Rest(new Id(id)) : found.Paths.Series)}?{FoundDesk.NotNotedQuery}=yes");
    }

    /// <summary>A day after today; nothing typed is no day and no problem.</summary>
    private static (LocalDate? Day, string? Problem) Day(string? typed, LocalDate today)
    {
        if (string.IsNullOrWhiteSpace(typed))
        {
            return (null, null);
        }

        var read = LocalDatePattern.Iso.Parse(typed.Trim());
        return read.Success && read.Value > today
            ? (read.Value, null)
            : (null, string.Create(CultureInfo.InvariantCulture, $"This is no day after today; one is written {today.PlusDays(30):uuuu-MM-dd}."));
    }

    private static TextField Field(string? typed, string? problem) => new()
    {
        Name = "until",
        Label = "It comes back on",
        Help = "Until then nothing of it counts as too quiet, and its work waits.",
        Type = "date",
        Value = typed ?? "",
        Problems = problem is null ? [] : [problem],
    };
}
