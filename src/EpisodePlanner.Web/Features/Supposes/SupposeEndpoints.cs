using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>Drafts of changes, planned beside the real plan, to be kept or dropped.</summary>
internal static class SupposeEndpoints
{
    private const string Word = "suppose";

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSupposes(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("/supposes").WithTags("Supposes");
        group.MapRead("", List).Named("listSupposes", "The drafts of a workshop, the newest first.");
        group.MapPost("", Create).Named("createSuppose", "Begins a draft.").TakesWorkshops().Refusing(ProblemTypes.BrokenRules);
        group.MapRead("/{id}", Read).Named("getSuppose", "A draft.");
        group.MapPut("/{id}", Put).Named("putSuppose", "Replaces what a draft is called and its changes.")
            .TakesWorkshops()
            .Refusing(ProblemTypes.BrokenRules);
        group.MapDelete("/{id}", Drop).Named("deleteSuppose", "Drops a draft.");
        group.MapRead("/{id}/plan", Plan).Named("getSupposePlan", "The plan as it would be if the draft were kept now.")
            .Refusing(ProblemTypes.BrokenRules)
            .Produces<PlanDocument>();
        group.MapRead("/{id}/difference", Difference)
            .Named(
                "getSupposeDifference",
                "What would differ from the plan if the draft were kept now.",
                "Uploads that get another day, come or go; silences; hours; what starts at another moment in the next seven days; and "
                + "what the draft touches that was changed since it was begun.")
            .Refusing(ProblemTypes.BrokenRules)
            .Produces<DifferenceDocument>();
        group.MapPost("/{id}/keep", Keep).Named(
            "keepSuppose", "Makes the changes of a draft real, all or none, and drops it.")
            .Refusing(ProblemTypes.BrokenRules);
    }

    private static async Task<Answer<SupposeList>> List(FoundWorkshop workshop, SupposeStore supposes, CancellationToken stop)
    {
        var list = await supposes.List(workshop.Id, stop) ?? [];
        return new(WorkshopFile.Write(new SupposeList { Items = list.Select(SupposeView.Of).ToValueList() }));
    }

    private static async Task<Results<Creation<SupposeView>, Problem>> Create(
        FoundWorkshop workshop, Body<SupposeRequest> body, IdempotencyKey key, SupposeStore supposes, CancellationToken stop)
    {
        var outcome = await supposes.Put(workshop.Id, Draft(null, [], body, workshop, key.For(body.Bytes)), stop);
        return outcome.Kept is { } kept
            ? new Creation<SupposeView>(
                $"{Api.Root}/workshops/{workshop.Id}/supposes/{kept.Id}", Bytes(kept), EntityTags.Of(kept.Version))
            : Refuse(outcome, workshop, "", null, null);
    }

    private static async Task<Results<Answer<SupposeView>, NotModified, Problem>> Read(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, SupposeStore supposes, CancellationToken stop) =>
        await Find(workshop, id, supposes, stop) is { } suppose
            ? Reply.To<SupposeView>(conditions, EntityTags.Of(suppose.Version), () => Bytes(suppose))
            : Refusals.NoThing(Word, id.Text);

    private static async Task<Results<Answer<SupposeView>, Problem>> Put(
        FoundWorkshop workshop,
        ThingId id,
        WriteConditions conditions,
        Body<SupposeRequest> body,
        SupposeStore supposes,
        CancellationToken stop)
    {
        if (await Find(workshop, id, supposes, stop) is not { } before)
        {
            return Refusals.NoThing(Word, id.Text);
        }

        var tag = EntityTags.Of(before.Version);
        if (conditions.Value.Judge(tag, isRead: false) != Verdict.Holds)
        {
            return Refusals.Stale(conditions.Value.IfMatch, tag);
        }

        var outcome = await supposes.Put(workshop.Id, Draft(before.Id, Versions(conditions), body, workshop, null), stop);
        return outcome.Kept is { } kept && !outcome.IsStale
            ? new Answer<SupposeView>(Bytes(kept), EntityTags.Of(kept.Version))
            : Refuse(outcome, workshop, id.Text, conditions.Value.IfMatch, outcome.Kept);
    }

    private static async Task<Results<Removed, Problem>> Drop(
        FoundWorkshop workshop, ThingId id, WriteConditions conditions, SupposeStore supposes, CancellationToken stop)
    {
        if (await Find(workshop, id, supposes, stop) is not { } before)
        {
            return Refusals.NoThing(Word, id.Text);
        }

        var tag = EntityTags.Of(before.Version);
        if (conditions.Value.Judge(tag, isRead: false) != Verdict.Holds)
        {
            return Refusals.Stale(conditions.Value.IfMatch, tag);
        }

        var outcome = await supposes.Drop(workshop.Id, before.Id, Versions(conditions), stop);
        return outcome is { IsStale: false, IsMissing: false }
            ? new Removed()
            : Refuse(outcome, workshop, id.Text, conditions.Value.IfMatch, outcome.Kept);
    }

    private static async Task<Results<Answer<PlanDocument>, NotModified, Problem>> Plan(
        FoundWorkshop workshop,
        ThingId id,
        Query<PlanQuery> query,
        ReadConditions conditions,
        SupposeStore supposes,
        PlanDesk desk,
        CancellationToken stop)
    {
        if (id.Value is not { } known || await supposes.Replay(workshop.Id, known, stop) is not { } supposed)
        {
            return Refusals.NoThing(Word, id.Text);
        }

        if (supposed.Draft is not { } draft)
        {
            return Problems.Broken(supposed.Reasons);
        }

        var key = PlanKey.Of(supposed.Now, query.Value.Schedules) with { Suppose = known, SupposeVersion = supposed.Suppose.Version };
        var tag = key.TagFor(query.Value);
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<PlanDocument>(await (await desk.Of(key, draft, stop)).Document(query.Value.Trials, stop), tag)
            : Reply.To<PlanDocument>(conditions, tag, () => default);
    }

    private static async Task<Results<Answer<DifferenceDocument>, NotModified, Problem>> Difference(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, SupposeDesk supposes, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        if (id.Value is not { } known || await supposes.Of(made, workshop.Id, known, stop) is not { } supposed)
        {
            return Refusals.NoThing(Word, id.Text);
        }

        if (supposed.Difference is not { } difference)
        {
            return Problems.Broken(supposed.Reasons);
        }

        var key = made.Key with { Suppose = known, SupposeVersion = supposed.Draft.Version };
        var tag = key.TagWith(".difference");
        var documents = new DifferenceDocuments(made.Plan);
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<DifferenceDocument>(
                DocumentJson.Write(documents.Of([documents.Of(supposed.Draft.Name, supposed.Draft.Changes, difference, supposed.ChangedSince)])), tag)
            : Reply.To<DifferenceDocument>(conditions, tag, () => default);
    }

    private static async Task<Results<Answer<ChangeMade>, Problem>> Keep(
        FoundWorkshop workshop, ThingId id, OptionalConditions conditions, SupposeStore supposes, CancellationToken stop)
    {
        if (await Find(workshop, id, supposes, stop) is not { } suppose)
        {
            return Refusals.NoThing(Word, id.Text);
        }

        var tag = EntityTags.Of(suppose.Version);
        return conditions.Value.Judge(tag, isRead: false) == Verdict.Holds
            ? ChangeMade.Answer(await supposes.Keep(workshop.Id, suppose.Id, workshop.Who, stop), workshop.Id, conditions.Value.IfMatch)
            : Refusals.Stale(conditions.Value.IfMatch, tag);
    }

    private static async Task<Suppose?> Find(FoundWorkshop workshop, ThingId id, SupposeStore supposes, CancellationToken stop) =>
        id.Value is { } known ? await supposes.Find(workshop.Id, known, stop) : null;

    private static SupposeDraft Draft(
        Id? id, ValueList<long> versions, Body<SupposeRequest> body, FoundWorkshop workshop, RequestKey? key) =>
        new(id, versions, body.Value.Name, body.Value.Base, new Batch(body.Value.Changes), workshop.Who, key);

    private static ValueList<long> Versions(WriteConditions conditions) => conditions.Value.IfMatch?.Versions ?? [];

    private static Problem Refuse(SupposeOutcome outcome, FoundWorkshop workshop, string id, EntityTags? yours, Suppose? now) =>
        outcome.IsMissing ? id.Length > 0 ? Refusals.NoThing(Word, id) : Refusals.NoWorkshop($"{workshop.Id}", null)
        : outcome.IsStale ? Refusals.Stale(yours, now is null ? null : EntityTags.Of(now.Version))
        : Problems.Broken(outcome.Reasons);

    private static byte[] Bytes(Suppose suppose) => WorkshopFile.Write(SupposeView.Of(suppose));
}
