using System.Text.Json.Nodes;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using Microsoft.Net.Http.Headers;
using NodaTime.Text;

namespace EpisodePlanner.Web.Serving;

/// <summary>The refusals that requests have in common.</summary>
internal static class Refusals
{
    public static Refusal BadBody(IReadOnlyList<Reason> reasons) =>
        new(Problem.BadRequest, Count("The body has", reasons)) { Errors = reasons };

    public static Refusal BadQuery(IReadOnlyList<Reason> reasons) =>
        new(Problem.BadRequest, Count("The query has", reasons)) { Errors = reasons };

    public static Refusal BadTag(string header) => new(
        Problem.BadRequest,
        $"{header} must be '*' or a list of entity tags in quotes, as an answer's ETag gives them: {header}: \"17\".");

    public static Refusal BadKey(int longest) => new(
        Problem.BadRequest, $"Idempotency-Key must stand there once and be 1 to {longest} visible ASCII characters.");

    public static Refusal NotJson(string? contentType) => new(
        Problem.NotJson,
        $"Send the body as Content-Type: application/json, in UTF-8; {(contentType is null ? "it has no type" : "it came as another type")}.");

    public static Refusal TooLarge() => new(Problem.TooLarge, "The body may have at most 10 MB.");

    public static Refusal Unguarded(string method) => new(
        Problem.Unguarded,
        method == HttpMethods.Put
            ? "Send If-Match with the ETag of what you have read and want to replace, or If-None-Match: * to make something new."
            : "Send If-Match with the ETag of what you have read.");

    public static Refusal NoWorkshop(string? id, NodaTime.Instant? deletedAt) => new(
        Problem.NotFound,
        deletedAt is { } then
            ? $"Workshop '{id}' was deleted at {InstantPattern.General.Format(then)}; it can be brought back until "
                + $"{InstantPattern.General.Format(then + WorkshopStore.DeletedKept)} by POST to its address with /restore."
            : $"There is no workshop '{id}'.");

    public static Refusal NoThing(string word, string? id) => new(Problem.NotFound, $"There is no {word} '{id}'.");

    /// <summary>Somebody else was quicker, or the client expected something that is not so.</summary>
    /// <param name="yours">What the client expected.</param>
    /// <param name="current">The tag of what is there; null where nothing is.</param>
    /// <param name="things">What in particular has another version, where the request is about several things.</param>
    public static Refusal Stale(EntityTags? yours, EntityTagHeaderValue? current, JsonArray? things = null) => new(
        Problem.Stale,
        current is null
            ? "What you expected is not there any more; read again what is."
            : yours is null
                ? "It is there already; read it, and send If-Match with its ETag to replace it."
                : "It was changed since you read it; read it again, and make your change to what is there now.")
    {
        More = new JsonObject
        {
            ["yours"] = yours?.ToString(),
            ["current"] = current?.Tag.ToString(),
            ["things"] = things ?? [],
        },
    };

    public static Refusal Exists(string word, Id id) => new(
        Problem.Exists, $"There is a {word} '{id}' already; choose another id, or replace it by PUT with If-Match.");

    public static Refusal OtherId(string id) => new(Problem.BadRequest, $"The address ends with '{id}', and the body has another id.")
    {
        Errors = [new Reason("$.id", Id.IsValid(id)
            ? $"Write '{id}' here, or leave the id out; an id never changes."
            : $"'{id}' in the address can't be an id; ids are 1 to {Id.MaximumLength} letters, digits, dots, dashes and underscores.")],
    };

    public static Refusal KeptForEver() => new(
        Problem.KeptForEver,
        "A told date is kept for ever, as it was said; add the new date beside it. If it was a slip, undo the change that added it.");

    public static Refusal KeyReused() => new(
        Problem.KeyReused, "This Idempotency-Key came with another request before; send this one with a key of its own.");

    public static Refusal NothingToDo(string says) => new(Problem.NothingToDo, says);

    public static Refusal Broken(ValueList<Reason> reasons) =>
        new(Problem.BrokenRules, Count("The change has", reasons)) { Errors = reasons };

    public static Refusal NothingAccepted() => new(Problem.NotFound, "No plan is accepted; accept one by POST to plan/accept.");

    public static Refusal NoBase() => new(
        Problem.Unguarded,
        "Give \"base\", the version of the workshop that the changes were made from, or If-Match with the workshop's ETag.");

    public static Refusal BaseAndMatch() => new(
        Problem.BadRequest,
        "Give either \"base\" or If-Match: the one asks that what the changes touch is unchanged, the other that all is.");

    public static Refusal BaseToCome(long now) => new(Problem.BadRequest, $"The workshop has version {now}; \"base\" is one to come.")
    {
        Errors = [new Reason("$.base", $"Write the version that you read, {now} at most.")],
    };

    private static string Count(string what, IReadOnlyList<Reason> reasons) =>
        reasons.Count == 1 ? reasons[0].Says : $"{what} {reasons.Count} things wrong; see 'errors'.";
}
