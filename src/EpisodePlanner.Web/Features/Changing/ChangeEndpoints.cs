using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Changing;

/// <summary>Batches of changes, the history, undo and redo.</summary>
internal static class ChangeEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapChanges(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("").WithTags("Changes");
        group.MapRead("/changes", History).Named("listChanges", "The history of a workshop, the newest first, in pages.");
        group.MapPost("/changes", Make).Named(
            "makeChanges",
            "Makes several changes, all or none.",
            "Give either \"base\" or If-Match: without them nobody could tell whether you overwrite somebody else's change.")
            .TakesWorkshops()
            .Refusing(ProblemTypes.PreconditionRequired, ProblemTypes.Conflict, ProblemTypes.BrokenRules);
        group.MapRead("/changes/{version:long}", Read).Named("getChange", "The change that led to a version, and the one that leads back.");
        group.MapPost("/changes/{version:long}/undo", UndoOne).Named("undoChange", "Takes back the change that led to a version.")
            .Refusing(ProblemTypes.Conflict, ProblemTypes.BrokenRules);
        group.MapPost("/undo", Undo).Named("undo", "Takes back the newest change that is in force.")
            .Refusing(ProblemTypes.Conflict, ProblemTypes.BrokenRules);
        group.MapPost("/redo", Redo).Named("redo", "Makes the change again that was taken back last.")
            .Refusing(ProblemTypes.Conflict, ProblemTypes.BrokenRules);
    }

    private static async Task<Results<Answer<HistoryPage>, NotModified, Problem>> History(
        FoundWorkshop workshop, Query<HistoryQuery> query, ReadConditions conditions, WorkshopStore store, CancellationToken stop)
    {
        var limit = query.Value.Limit;
        var lines = await store.History(workshop.Id, query.Value.Before, limit + 1, stop) ?? [];
        var page = new HistoryPage
        {
            Version = workshop.Now.Version,
            Items = lines.Take(limit).Select(HistoryItem.From).ToValueList(),
            Next = lines.Count > limit ? lines[limit - 1].Version : null,
        };
        return Reply.To<HistoryPage>(conditions, EntityTags.Of(page.Version), () => WorkshopFile.Write(page));
    }

    private static async Task<Results<Answer<KeptChange>, NotModified, Problem>> Read(
        FoundWorkshop workshop, long version, ReadConditions conditions, WorkshopStore store, CancellationToken stop)
    {
        if (await store.FindChange(workshop.Id, version, stop) is not { } change)
        {
            return Refusals.NoThing("change", $"{version}");
        }

        var kept = new KeptChange { Line = HistoryItem.From(change.Line), After = change.After, Before = change.Before };
        return Reply.To<KeptChange>(conditions, EntityTags.Of(workshop.Now.Version), () => WorkshopFile.Write(kept));
    }

    private static async Task<Results<Answer<ChangeMade>, Problem>> Make(
        FoundWorkshop workshop,
        OptionalConditions conditions,
        Body<ChangeRequest> body,
        IdempotencyKey key,
        WorkshopStore store,
        CancellationToken stop)
    {
        if (body.Value.Changes.Any(IsTakenBack))
        {
            return Refusals.KeptForEver();
        }

        if (Expect(workshop.Now, conditions.Value, body.Value.Base, out var expects) is { } refusal && !(key.IsGiven && refusal.Document.Status == StatusCodes.Status412PreconditionFailed))
        {
            return refusal;
        }

        var edit = new Edit(new Batch(body.Value.Changes), workshop.Who) { Expects = expects, Key = key.For(body.Bytes) };
        return ChangeMade.Answer(await store.Make(workshop.Id, edit, stop), workshop.Id, conditions.Value.IfMatch);
    }

    private static Task<Results<Answer<ChangeMade>, Problem>> UndoOne(
        FoundWorkshop workshop, long version, OptionalConditions conditions, WorkshopStore store, CancellationToken stop) =>
        Guarded(workshop, conditions, expects => store.Undo(workshop.Id, version, workshop.Who, expects, stop));

    private static Task<Results<Answer<ChangeMade>, Problem>> Undo(
        FoundWorkshop workshop, OptionalConditions conditions, WorkshopStore store, CancellationToken stop) =>
        Guarded(workshop, conditions, expects => store.Undo(workshop.Id, null, workshop.Who, expects, stop));

    private static Task<Results<Answer<ChangeMade>, Problem>> Redo(
        FoundWorkshop workshop, OptionalConditions conditions, WorkshopStore store, CancellationToken stop) =>
        Guarded(workshop, conditions, expects => store.Redo(workshop.Id, workshop.Who, expects, stop));

    private static async Task<Results<Answer<ChangeMade>, Problem>> Guarded(
        FoundWorkshop workshop, OptionalConditions conditions, Func<Expectation, Task<EditOutcome>> make) =>
        Guards.Judge(conditions.Value, workshop.Now, out var expects) is { } refusal
            ? refusal
            : ChangeMade.Answer(await make(expects), workshop.Id, conditions.Value.IfMatch);

    private static Problem? Expect(Snapshot now, Conditions conditions, long? from, out Expectation expects)
    {
        expects = from is { } version ? new Expectation.UntouchedSince(version) : Expectation.None;
        return (conditions.IfMatch, from) switch
        {
            (null, null) => Refusals.NoBase(),
            (not null, not null) => Refusals.BaseAndMatch(),
            (not null, null) => Guards.Judge(conditions, now, out expects),
            (null, { } given) => given > now.Version ? Refusals.BaseToCome(now.Version) : null,
        };
    }

    private static bool IsTakenBack(Change change) =>
        change is ToldDateTakenBack || (change is Batch batch && batch.Changes.Any(IsTakenBack));
}
