using System.Globalization;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.Now;

/// <summary>What is next, and telling what became of it.</summary>
internal static class NowEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapNow(this RouteGroupBuilder desk)
    {
        desk.MapGet("", Show);
        desk.MapGet("/mark", Mark);
        desk.MapPost("/tap", Tap);
    }

    private static async Task<RazorComponentResult<NowPage>> Show(
        FoundDesk found, bool? wait, [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted, Desk desk, CancellationToken stop)
    {
        var view = await desk.Weighed(found.Now, found.Done, wait == true, stop);
        return Shown.As<NowPage>((nameof(NowPage.View), view with { IsUnnoted = unnoted is not null }));
    }

    /// <summary>A word that changes where the pages would, so that an open page can tell that it is out of date.</summary>
    private static async Task<IResult> Mark(FoundDesk found, Desk desk, HttpContext context, CancellationToken stop)
    {
        context.Response.Headers.CacheControl = "no-store";
        return Results.Text(await desk.Mark(found.Now, stop));
    }

    /// <summary>
    /// Notes what became of a stretch of work. A tap that comes twice within the same version is one: the entry's id is
    /// made of what it is about.
    /// </summary>
    private static async Task<IResult> Tap(
        FoundDesk found, [FromForm] TapForm tap, WorkshopStore store, TimeProvider clock, CancellationToken stop)
    {
        if (tap.Key is not { } key || !Enum.TryParse<LogOutcome>(tap.Outcome, ignoreCase: true, out var outcome))
        {
            return Results.BadRequest();
        }

        var id = new Id(string.Create(CultureInfo.InvariantCulture, $"tap-{tap.Base}-{found.Now.Workshop.Log.Count}"));
        var at = NodaTime.Instant.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds());
        if (TapLog.Change(found.Now.Workshop, key, outcome, at, id) is not { } change)
        {
            return NotNoted(found, tap);
        }

        var outcomeOfEdit = await store.Make(
            found.Now.Id,
            new Edit(change, found.Who) { Expects = new Expectation.UntouchedSince(tap.Base) },
            stop);
        return outcomeOfEdit is Made or Unchanged
            ? Results.LocalRedirect(Desk.After(tap.Back(found.Paths), outcomeOfEdit))
            : NotNoted(found, tap);
    }

    /// <summary>The page as it is now, which says that the tap was about something that is gone or was told before.</summary>
    private static IResult NotNoted(FoundDesk found, TapForm tap) =>
        Results.LocalRedirect($"{tap.Back(found.Paths)}?{FoundDesk.NotNotedQuery}=yes");
}

/// <summary>A tap, as it is sent.</summary>
internal sealed class TapForm
{
    /// <summary>The task; empty for a tail.</summary>
    public string? Task { get; init; }

    /// <summary>The stage of the task.</summary>
    public string? Stage { get; init; }

    /// <summary>The shot of the task, in place of a stage.</summary>
    public string? Shot { get; init; }

    /// <summary>The episode whose tail it is.</summary>
    public string? Episode { get; init; }

    /// <summary>The part of the tail, from 0; −1 for a task.</summary>
    public int Part { get; init; } = -1;

    /// <summary>begun, done, partly or failed.</summary>
    public string? Outcome { get; init; }

    /// <summary>The version of the workshop on the page.</summary>
    public long Base { get; init; }

    /// <summary>The series whose page it was on; empty for the first page.</summary>
    public string? Series { get; init; }

    /// <summary>What it is about; null where that is nothing.</summary>
    public StageKey? Key => Part < 0 ? OfTask() : Id.IsValid(Episode) ? StageKey.OfTail(new Id(Episode!), Part) : null;

    /// <summary>The page to go back to.</summary>
    public string Back(Paths paths) => Id.IsValid(Series) ? paths.OfSeries(new Id(Series!)) : paths.Now;

    private StageKey? OfTask() => !Id.IsValid(Task) ? null
        : Id.IsValid(Stage) ? StageKey.OfTask(new Id(Task!), new Id(Stage!))
        : Id.IsValid(Shot) ? StageKey.OfShot(new Id(Task!), new Id(Shot!))
        : null;
}
