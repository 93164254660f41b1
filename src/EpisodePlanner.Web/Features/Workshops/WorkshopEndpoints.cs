using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Workshops;

/// <summary>The workshops themselves.</summary>
internal static class WorkshopEndpoints
{
    private const string Tag = "Workshops";

    /// <summary>Maps them.</summary>
    public static void MapWorkshops(this RouteGroupBuilder api)
    {
        var group = api.MapGroup("/workshops").WithTags(Tag);
        group.MapRead("", List).Named("listWorkshops", "The workshops, by name.");
        group.MapPost("", Create).Named("createWorkshop", "Begins an empty workshop.").Refusing(ProblemTypes.BrokenRules);
        group.MapRead("/deleted", ListDeleted).Named(
            "listDeletedWorkshops", "The workshops that were deleted and can be brought back, the latest first.");

        var one = group.MapGroup($"/{{{FoundWorkshop.Parameter}}}");
        one.MapRead("", Read).Named("getWorkshop", "A workshop without its things.");
        one.MapPut("", Put).Named("putWorkshop", "Gives a workshop another name and time zone.").Refusing(ProblemTypes.BrokenRules);
        one.MapDelete("", Delete).Named("deleteWorkshop", "Deletes a workshop.", "It can be brought back for 30 days.");
        one.MapPost("/restore", Restore).Named("restoreWorkshop", "Brings a deleted workshop back.")
            .Refusing(ProblemTypes.NotFound, ProblemTypes.Conflict);
    }

    /// <summary>The answer to whoever made a workshop.</summary>
    public static Results<Creation<WorkshopHead>, Problem> Created(EditOutcome outcome) => outcome is Made made
        ? new Creation<WorkshopHead>(
            $"{Api.Root}/workshops/{made.Now.Id}", WorkshopFile.Write(WorkshopHead.Of(made.Now)), EntityTags.Of(made.Now.Version))
        : Outcomes.Refuse(outcome, default);

    private static async Task<Answer<WorkshopList>> List(WorkshopStore store, CancellationToken stop) =>
        new(WorkshopFile.Write(WorkshopList.Of(await store.List(stop))));

    private static async Task<Answer<WorkshopList>> ListDeleted(WorkshopStore store, CancellationToken stop) =>
        new(WorkshopFile.Write(WorkshopList.Of(await store.ListDeleted(stop))));

    private static async Task<Results<Creation<WorkshopHead>, Problem>> Create(
        Body<WorkshopAbout> body, IdempotencyKey key, WorkshopStore store, CancellationToken stop)
    {
        var workshop = new Workshop { Format = Workshop.CurrentFormat, Name = body.Value.Name, Zone = body.Value.Zone };
        return Created(await store.Create(workshop, Makers.Of(workshop), key.For(body.Bytes), stop));
    }

    private static Results<Answer<WorkshopHead>, NotModified, Problem> Read(FoundWorkshop workshop, ReadConditions conditions) =>
        Reply.To<WorkshopHead>(
            conditions, EntityTags.Of(workshop.Now.Version), () => WorkshopFile.Write(WorkshopHead.Of(workshop.Now)));

    private static async Task<Results<Answer<WorkshopHead>, Problem>> Put(
        FoundWorkshop workshop, WriteConditions conditions, Body<WorkshopAbout> body, WorkshopStore store, CancellationToken stop)
    {
        if (Guards.Judge(conditions.Value, workshop.Now, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Make(workshop.Id, new Edit(body.Value.ToChange(), workshop.Who) { Expects = expects }, stop);
        return outcome switch
        {
            Made made => Head(made.Now),
            Unchanged same => Head(same.Now),
            _ => Outcomes.Refuse(outcome, workshop.Id, conditions.Value.IfMatch),
        };
    }

    private static async Task<Results<Removed, Problem>> Delete(
        FoundWorkshop workshop, WriteConditions conditions, WorkshopStore store, CancellationToken stop)
    {
        if (Guards.Judge(conditions.Value, workshop.Now, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Delete(workshop.Id, workshop.Who, expects, stop);
        return outcome is Made ? new Removed() : Outcomes.Refuse(outcome, workshop.Id, conditions.Value.IfMatch);
    }

    private static async Task<Results<Answer<WorkshopHead>, Problem>> Restore(
        ThingId workshop, WorkshopStore store, CancellationToken stop)
    {
        if (workshop.Value is not { } id)
        {
            return Refusals.NoWorkshop(workshop.Text, null);
        }

        var outcome = await store.Restore(id, Makers.Unknown, stop);
        return outcome switch
        {
            Made made => Head(made.Now),
            Unchanged same => Head(same.Now),
            _ => Outcomes.Refuse(outcome, id),
        };
    }

    private static Answer<WorkshopHead> Head(Snapshot now) => new(WorkshopFile.Write(WorkshopHead.Of(now)), EntityTags.Of(now.Version));
}
