using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>The endpoints of one kind of thing: its list, and each thing read, made, replaced and removed.</summary>
/// <param name="kind">The kind.</param>
/// <param name="filter">What a query of the list means.</param>
/// <typeparam name="T">The type of the things.</typeparam>
/// <typeparam name="TQuery">What the list can be asked.</typeparam>
internal sealed class ThingEndpoints<T, TQuery>(ThingKind<T> kind, ThingFilter<T, TQuery> filter)
    where T : class, IThing
    where TQuery : class, IThingQuery
{
    private readonly ThingPaths paths = new(kind);

    /// <summary>Maps them beneath a workshop.</summary>
    public void Map(RouteGroupBuilder workshop)
    {
        var (word, one, many) = (kind.Word, paths.One, paths.Many);
        var group = workshop.MapGroup(paths.Segment).WithTags(many);
        group.MapRead("", List).Named($"list{many}", $"The {paths.Words} of a workshop, by id, in pages.");
        group.MapPost("", Create).Named(
            $"create{one}", $"Makes a {word}.", $"With the id in the body, or a new one where it has none.")
            .Refusing(ProblemTypes.Conflict, ProblemTypes.BrokenRules);
        group.MapRead("/{id}", Read).Named($"get{one}", $"One {word}.");
        var put = group.MapPut("/{id}", Put).Named(
            $"put{one}",
            $"Replaces a {word}, or makes one with a chosen id.",
            "If-Match says which version is replaced; If-None-Match: * makes a new one.")
            .Refusing(ProblemTypes.BrokenRules);
        var delete = group.MapDelete("/{id}", Delete).Named(
            $"delete{one}", $"Removes a {word}.", "It can be brought back for 30 days, and the removal be undone.")
            .Refusing(ProblemTypes.BrokenRules);
        if (typeof(T) == typeof(ToldDate))
        {
            put.Refusing(ProblemTypes.Conflict).WithDescription("Only If-None-Match: * can be right: what was told is kept for ever as it was said.");
            delete.ExcludeFromDescription();
        }
    }

    private Results<Answer<ThingPage<T>>, NotModified, Problem> List(
        FoundWorkshop workshop, Query<TQuery> query, ReadConditions conditions) =>
        Reply.To<ThingPage<T>>(
            conditions, EntityTags.Of(workshop.Now.Version), () => WorkshopFile.Write(PageOf(workshop.Now, query.Value)));

    private async Task<Results<Answer<T>, NotModified, Problem>> Read(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, WorkshopStore store, CancellationToken stop) =>
        id.Value is { } known && kind.Get(workshop.Now.Workshop).Find(known) is { } thing
            ? Reply.To<T>(
                conditions, EntityTags.Of(workshop.Now.VersionOf(kind.Of(known))!.Value), () => WorkshopFile.Write(thing))
            : await paths.Missing(workshop.Id, id, store, stop);

    private async Task<Results<Creation<T>, Problem>> Create(
        FoundWorkshop workshop, Body<T> body, IdempotencyKey key, WorkshopStore store, IdSource ids, CancellationToken stop)
    {
        var id = body.Value.Id.IsEmpty ? ids.Next() : body.Value.Id;
        var thing = kind.Complete(body.Value, id, workshop.Now.Workshop);
        var outcome = await store.Make(
            workshop.Id,
            new Edit(kind.Put(thing), workshop.Who) { Expects = new Expectation.Absent(kind.Of(id)), Key = key.For(body.Bytes) },
            stop);
        return outcome switch
        {
            Made { Change.After: ThingChange<T> { To: { } made } } done => Creation(workshop.Id, made, done),
            Stale => Refusals.Exists(kind.Word, id),
            _ => Outcomes.Refuse(outcome, workshop.Id),
        };
    }

    private async Task<Results<Answer<T>, Creation<T>, Problem>> Put(
        FoundWorkshop workshop, ThingId id, WriteConditions conditions, Body<T> body, WorkshopStore store, CancellationToken stop)
    {
        if (id.Value is not { } known || (!body.Value.Id.IsEmpty && body.Value.Id != known))
        {
            return Refusals.OtherId(id.Text);
        }

        var (before, what) = (kind.Get(workshop.Now.Workshop).Find(known), kind.Of(known));
        var thing = (T)kind.Complete(body.Value, known, workshop.Now.Workshop);
        if (before is ToldDate && !before.Equals(thing))
        {
            return Refusals.KeptForEver();
        }

        if (Guards.Judge(conditions.Value, workshop.Now, what, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Make(workshop.Id, new Edit(kind.Put(thing), workshop.Who) { Expects = expects }, stop);
        return outcome switch
        {
            Made done when before is null => Creation(workshop.Id, thing, done),
            Made done => new Answer<T>(WorkshopFile.Write(thing), EntityTags.Of(done.Change.Line.Version)),
            Unchanged same => new Answer<T>(WorkshopFile.Write(thing), EntityTags.Of(same.Now.VersionOf(what)!.Value)),
            _ => Outcomes.Refuse(outcome, workshop.Id, conditions.Value.IfMatch, what),
        };
    }

    private async Task<Results<Removed, Problem>> Delete(
        FoundWorkshop workshop, ThingId id, WriteConditions conditions, WorkshopStore store, CancellationToken stop)
    {
        if (id.Value is not { } known || kind.Find(workshop.Now.Workshop, known) is null)
        {
            return await paths.Missing(workshop.Id, id, store, stop);
        }

        var what = kind.Of(known);
        if (typeof(T) == typeof(ToldDate))
        {
            return Refusals.KeptForEver();
        }

        if (Guards.Judge(conditions.Value, workshop.Now, what, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Make(workshop.Id, new Edit(kind.Remove(known), workshop.Who) { Expects = expects }, stop);
        return outcome is Made ? new Removed() : Outcomes.Refuse(outcome, workshop.Id, conditions.Value.IfMatch, what);
    }

    private ThingPage<T> PageOf(Snapshot now, TQuery query)
    {
        var found = kind.Get(now.Workshop)
            .Where(thing => !(thing.Id <= query.After) && filter(thing, query, now.Workshop))
            .Take(query.Limit + 1)
            .ToList();
        var shown = found.Take(query.Limit).ToList();
        return new ThingPage<T>
        {
            Version = now.Version,
            Items = shown.Select(thing => new ThingLine<T> { Version = now.VersionOf(kind.Of(thing.Id))!.Value, Thing = thing }).ToValueList(),
            Next = found.Count > shown.Count ? shown[^1].Id : null,
        };
    }

    private Creation<T> Creation(Id workshop, T thing, Made made) =>
        new(paths.Of(workshop, thing.Id), WorkshopFile.Write(thing), EntityTags.Of(made.Change.Line.Version));
}
