using EpisodePlanner.Data;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.CouldPublish;

/// <summary>"Could I publish now?": for programs, and as a page.</summary>
internal static class PublishNowEndpoints
{
    /// <summary>Maps it beneath a workshop of the API.</summary>
    public static void MapPublishNow(this RouteGroupBuilder workshop) => workshop.MapGroup("/publish-now").WithTags("Plan")
        .MapRead("", Read)
        .Named(
            "getPublishNow",
            "What each series could publish now.",
            "An episode cut right behind what is done: what it shows, what of it is filmed, what it still needs, the first slot it "
            + "reaches, and the silences after it; planned, with the change that makes it.")
        .Produces<PublishNowDocument>();

    /// <summary>Maps the page.</summary>
    public static void MapPublishNowPage(this RouteGroupBuilder desk)
    {
        desk.MapGet("/story/now", Show);
        desk.MapPost("/story/now", Take);
    }

    private static async Task<Results<Answer<PublishNowDocument>, NotModified, Problem>> Read(
        FoundWorkshop workshop, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var tag = made.Key.TagWith(".publish-now");
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<PublishNowDocument>(DocumentJson.Write(PublishNowDocuments.Of(made.Plan, await made.PublishNow(stop))), tag)
            : Reply.To<PublishNowDocument>(conditions, tag, () => default);
    }

    private static async Task<IResult> Show(
        FoundDesk found, [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted, Desk desk, PlanDesk plans, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        return Shown.As<PublishNowPage>(
            (nameof(PublishNowPage.View), view with { IsUnnoted = unnoted is not null }),
            (nameof(PublishNowPage.Answers), await made.PublishNow(stop)));
    }

    private static async Task<IResult> Take(
        FoundDesk found, [FromForm] string? series, [FromForm(Name = "base")] long version, PlanDesk plans, WorkshopStore store, CancellationToken stop)
    {
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var answers = version == found.Now.Version ? await made.PublishNow(stop) : [];
        var change = answers.FirstOrDefault(about => $"{about.Series.Id}" == series)?.Change;
        var outcome = change is null
            ? null
            : await store.Make(
                found.Now.Id, new Edit(change, found.Who) { Expects = new Expectation.UntouchedSince(version) }, stop);
        return Results.LocalRedirect(outcome is Made or Unchanged
            ? Desk.After(found.Paths.PublishNow, outcome)
            : $"{found.Paths.PublishNow}?{FoundDesk.NotNotedQuery}=yes");
    }
}
