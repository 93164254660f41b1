using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Features.Things;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;

namespace EpisodePlanner.Web.Features.Deleted;

/// <summary>What was deleted in a workshop and can be brought back, the latest first.</summary>
internal sealed record DeletedList
{
    /// <summary>The workshop's version.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>The things.</summary>
    public required ValueList<DeletedItem> Items { get; init; }
}

/// <summary>A deleted thing.</summary>
internal sealed record DeletedItem
{
    /// <summary>Its kind, as it stands in addresses: "slot-rules".</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>Its id.</summary>
    public required Id Id { get; init; }

    /// <summary>What it was called.</summary>
    [StringLength(500)]
    public required string Name { get; init; }

    /// <summary>The version of the workshop at which it was deleted.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>When it was deleted.</summary>
    public required Instant At { get; init; }

    /// <summary>Until when it can be brought back.</summary>
    public required Instant KeptUntil { get; init; }

    /// <summary>A line of the store.</summary>
    public static DeletedItem Of(DeletedThing thing) => new()
    {
        Kind = ThingKinds.Find(thing.What.Kind) is { } kind ? ThingPaths.NameOf(kind) : thing.What.Kind,
        Id = thing.What.Id,
        Name = thing.Name,
        Version = thing.Version,
        At = thing.At,
        KeptUntil = thing.KeptUntil,
    };
}

/// <summary>Deleted things and their way back.</summary>
internal static class DeletedEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapDeleted(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("/deleted").WithTags("Deleted");
        group.MapRead("", List).Named("listDeleted", "What was deleted and can be brought back, the latest first.");
        group.MapPost("/{kind}/{id}/restore", Restore).Named("restoreThing", "Brings a deleted thing back as it was.")
            .Refusing(ProblemTypes.Conflict, ProblemTypes.BrokenRules);
    }

    private static async Task<Results<Answer<DeletedList>, NotModified, Problem>> List(
        FoundWorkshop workshop, ReadConditions conditions, WorkshopStore store, CancellationToken stop)
    {
        var things = await store.Deleted(workshop.Id, stop) ?? [];
        var list = new DeletedList { Version = workshop.Now.Version, Items = things.Select(DeletedItem.Of).ToValueList() };
        return Reply.To<DeletedList>(conditions, EntityTags.Of(list.Version), () => WorkshopFile.Write(list));
    }

    private static async Task<Results<Answer<ChangeMade>, Problem>> Restore(
        FoundWorkshop workshop, string kind, ThingId id, WorkshopStore store, CancellationToken stop) =>
        ThingPaths.Find(kind) is { } found && id.Value is { } known
            ? ChangeMade.Answer(await store.Restore(workshop.Id, found.Of(known), workshop.Who, stop), workshop.Id, null)
            : Refusals.NoThing("deleted thing", $"{kind}/{id.Text}");
}
