using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>The plan of a workshop, and saying yes to it.</summary>
internal static class PlanEndpoints
{
    private const string Tag = "Plan";

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapPlans(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("/plan").WithTags(Tag);
        group.MapRead("", Read).Named(
            "getPlan",
            "The plan with all its parts.",
            "Dates of tasks, stages and episodes with their causes and chains, silences, the next thing, tonight's runs, what "
            + "to film first, findings, and what was assumed. The same until something is changed, or a start or a slot has passed.")
            .Produces<PlanDocument>();
        group.MapPost("/accept", Accept).Named(
            "acceptPlan",
            "Accepts the plan that If-Match names.",
            "Its order and its next starts are kept as a change, and later plans leave them only for a reason.");
    }

    private static async Task<Results<Answer<PlanDocument>, NotModified, Problem>> Read(
        FoundWorkshop workshop, Query<PlanQuery> query, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, query.Value.Schedules, stop);
        var tag = made.Key.TagFor(query.Value);
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<PlanDocument>(await made.Document(query.Value.Trials, stop), tag)
            : Reply.To<PlanDocument>(conditions, tag, () => default);
    }

    private static async Task<Results<Answer<ChangeMade>, Problem>> Accept(
        FoundWorkshop workshop,
        Query<PlanQuery> query,
        WriteConditions conditions,
        PlanDesk desk,
        WorkshopStore store,
        CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, query.Value.Schedules, stop);
        var tag = made.Key.TagFor(query.Value);
        if (conditions.Value.Judge(tag, isRead: false) != Verdict.Holds)
        {
            return Refusals.Stale(conditions.Value.IfMatch, tag);
        }

        var edit = new Edit(new AcceptedPlanChange(Acceptance.Of(made.Plan)), workshop.Who)
        {
            Expects = new Expectation.WorkshopAt([made.Key.Version]),
        };
        return ChangeMade.Answer(await store.Make(workshop.Id, edit, stop), workshop.Id, conditions.Value.IfMatch);
    }
}
