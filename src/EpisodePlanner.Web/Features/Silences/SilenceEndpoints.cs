using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Pictures;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.Silences;

/// <summary>The silences of every series.</summary>
internal static class SilenceEndpoints
{
    private const int UsualWeeks = 26;
    private const int MostWeeks = 104;
    private const string Channel = "channel";

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSilences(this RouteGroupBuilder desk)
    {
        desk.MapGet("/silence", Show);
        desk.MapGet("/silence/picture.{ending}", Draw);
        desk.MapGet("/silence/channel", (FoundDesk found, [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted, bool? wait, Desk desk, CancellationToken stop) =>
            ShowRemedies(found, null, unnoted, wait, desk, stop));
        desk.MapGet("/silence/of/{series}", ShowRemedies);
        desk.MapPost("/silence/take", Take);
    }

    /// <summary>Maps what can be done about silences beneath a workshop of the API.</summary>
    public static void MapRemedies(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("/silences").WithTags("Plan");
        group.MapRead("", ReadRemedies).Named(
            "getSilences",
            "Silences beyond promises, and what can be done about each.",
            "For each series whose promise breaks, and for the channel: other cuts, more hands, open days, work put off, resting "
            + "openly; each planned and given as a change that can be made, with the days it wins and what it costs.")
            .Produces<SilencesDocument>();
        group.MapRead("/{id}", FindRemedies).Named(
            "findRemedies",
            "What can be done about the silence of a series, or of the channel, each way out as soon as it is found.",
            "The id is a series' or \"channel\". The answer grows while ways out are tried; it is empty where the promise holds.");
    }

    private static async Task<Results<RemedyStream, Problem>> FindRemedies(
        FoundWorkshop workshop, ThingId id, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var series = id.Text == Channel ? default(Id) : id.Value;
        return series is { } known && (known.IsEmpty || made.Plan.Series.Any(outlook => outlook.Series == known))
            ? new RemedyStream(made.Finding(known, stop))
            : Refusals.NoThing("series", id.Text);
    }

    private static async Task<Results<Answer<SilencesDocument>, NotModified, Problem>> ReadRemedies(
        FoundWorkshop workshop, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var tag = made.Key.TagWith(".silences");
        if (conditions.Judge(tag) != Verdict.Holds)
        {
            return Reply.To<SilencesDocument>(conditions, tag, () => default);
        }

        var silences = new List<SilenceRemedies>();
        foreach (var outlook in SilencesAhead.Of(made.Plan))
        {
            silences.Add((await made.Remedies(outlook.Series, stop))!);
        }

        return new Answer<SilencesDocument>(DocumentJson.Write(new SilenceDocuments(made.Plan).Of(silences)), tag);
    }

    private static async Task<IResult> ShowRemedies(
        FoundDesk found,
        string? series,
        [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted,
        bool? wait,
        Desk desk,
        CancellationToken stop)
    {
        var id = series is null ? default(Id) : Id.IsValid(series) ? new Id(series) : (Id?)null;
        var view = await desk.View(found.Now, found.Done, stop);
        if (id is not { } whose || (series is not null && view.Plan.Series.All(outlook => outlook.Series != whose)))
        {
            return Results.LocalRedirect(found.Paths.Silence);
        }

        return Shown.As<RemedyPage>(
            (nameof(RemedyPage.View), view with { IsUnnoted = unnoted is not null }),
            (nameof(RemedyPage.Name), view.Workshop.Series.Find(whose)?.Name ?? "the channel"),
            (nameof(RemedyPage.About), await desk.Remedies(found.Now, whose, wait == true, stop)));
    }

    /// <summary>Makes the change of a remedy, as it was shown.</summary>
    private static async Task<IResult> Take(
        FoundDesk found, [FromForm] RemedyForm form, PlanDesk plans, WorkshopStore store, CancellationToken stop)
    {
        var series = Id.IsValid(form.Series) ? new Id(form.Series!) : default;
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var about = form.Base == found.Now.Version ? await made.Remedies(series, stop) : null;
        var remedy = about?.Helping.Append(about.Rest).FirstOrDefault(one => one?.Says == form.Says);
        var outcome = remedy is null
            ? null
            : await store.Make(
                found.Now.Id, new Edit(remedy.Change, found.Who) { Expects = new Expectation.UntouchedSince(form.Base) }, stop);
        var back = found.Paths.Remedies(series);
        return Results.LocalRedirect(
            outcome is Made or Unchanged ? Desk.After(back, outcome) : $"{back}?{FoundDesk.NotNotedQuery}=yes");
    }

    private static async Task<RazorComponentResult<SilencePage>> Show(
        FoundDesk found, int? weeks, bool? wait, Desk desk, CancellationToken stop) =>
        Shown.As<SilencePage>(
            (nameof(SilencePage.View), await desk.Weighed(found.Now, found.Done, wait == true, stop)), (nameof(SilencePage.Weeks), Weeks(weeks)));

    private static async Task<IResult> Draw(
        FoundDesk found, string ending, int? weeks, string? theme, Desk desk, CancellationToken stop)
    {
        var plan = (await desk.View(found.Now, null, stop)).Plan;
        var picture = SilencePicture.Draw(plan, SilenceView.Around(plan, Weeks(weeks), BenchView.Desk), "silence");
        return PictureFile.Of(picture, ending, theme, "silence");
    }

    private static int Weeks(int? asked) => Math.Clamp(asked ?? UsualWeeks, 4, MostWeeks);
}

/// <summary>A remedy that is taken, as it is sent.</summary>
internal sealed class RemedyForm
{
    /// <summary>The series; empty for the channel.</summary>
    public string? Series { get; init; }

    /// <summary>Which remedy, by its words.</summary>
    public string? Says { get; init; }

    /// <summary>The version of the workshop on the page.</summary>
    public long Base { get; init; }
}
