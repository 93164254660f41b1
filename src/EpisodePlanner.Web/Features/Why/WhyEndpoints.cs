using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Proofs;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Why;

/// <summary>Why an episode goes out when it does: for programs, and as a page.</summary>
internal static class WhyEndpoints
{
    /// <summary>Maps it beneath a workshop of the API.</summary>
    public static void MapWhy(this RouteGroupBuilder workshop) => workshop.MapGroup("/episodes").WithTags("Plan")
        .MapRead("/{id}/why", Read)
        .Named(
            "getWhy",
            "Why an episode to come goes out when it does, and what would make a difference.",
            "Its chain; what one more station, another open day, shorter work or looser publishing would win, each tried by "
            + "planning again and given as a change that can be made; what can wait a day; which stations are contested.")
        .Produces<WhyDocument>();

    /// <summary>Maps the page.</summary>
    public static void MapWhyPage(this RouteGroupBuilder desk) => desk.MapGet("/why/{episode}", Show);

    private static async Task<Results<Answer<WhyDocument>, NotModified, Problem>> Read(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        if (id.Value is not { } episode || !made.Plan.Episodes.Any(e => e.Id == episode))
        {
            return Refusals.NoThing("episode to come", id.Text);
        }

        var tag = made.Key.TagWith(".why");
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<WhyDocument>(DocumentJson.Write(new WhyDocuments(made.Plan).Of((await made.Why(episode, stop))!)), tag)
            : Reply.To<WhyDocument>(conditions, tag, () => default);
    }

    private static async Task<IResult> Show(
        FoundDesk found, string episode, bool? soonest, Desk desk, PlanDesk plans, ProofDesk proofs, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var why = Id.IsValid(episode) ? await made.Why(new Id(episode), stop) : null;
        var proof = why is not null && soonest is true
            ? await proofs.OfEpisode(made.Plan, why.Episode.Id, ProofQuery.UsualSeconds, stop)
            : null;
        return Shown.As<WhyPage>(
            why is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK,
            (nameof(WhyPage.View), view),
            (nameof(WhyPage.Why), why),
            (nameof(WhyPage.Proof), proof));
    }
}
