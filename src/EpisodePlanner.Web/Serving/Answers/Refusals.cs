using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using Microsoft.Net.Http.Headers;
using NodaTime;

namespace EpisodePlanner.Web.Serving.Answers;

/// <summary>The refusals that requests have in common.</summary>
internal static class Refusals
{
    public static Problem BadTag(string header) => Problems.Invalid(
        header, $"{header} must be * or a list of entity tags in quotes, as an answer's ETag gives them: {header}: \"17\".");

    public static Problem BadKey(string header, int longest) =>
        Problems.Invalid(header, $"{header} must stand there once and be 1 to {longest} visible ASCII characters.");

    public static Problem NotJson(string? contentType) => Problems.Of(
        ProblemTypes.UnsupportedMedia,
        $"Send the body as Content-Type: application/json, in UTF-8; {(contentType is null ? "it has no type" : "it came as another type")}.");

    public static Problem TooLarge(long most) =>
        Problems.Of(ProblemTypes.TooLarge, $"The body may have at most {most / 1_024 / 1_024} MB here.");

    public static Problem Unguarded(string method) => Problems.PreconditionRequired(
        method == HttpMethods.Put
            ? "Send If-Match with the ETag of what you have read and want to replace, or If-None-Match: * to make something new."
            : "Send If-Match with the ETag of what you have read.");

    public static Problem NoWorkshop(string? id, Instant? deletedAt) => deletedAt is { } then
        ? Problems.Gone($"The workshop '{id}'", then, $"/api/v1/workshops/{id}/restore")
        : Problems.NotFound($"There is no workshop '{id}'.");

    public static Problem NoThing(string word, string? id) => Problems.NotFound($"There is no {word} '{id}'.");

    /// <summary>Somebody else was quicker, or the client expected something that is not so.</summary>
    /// <param name="yours">What the client expected.</param>
    /// <param name="current">The tag of what is there; null where nothing is.</param>
    /// <param name="things">What in particular has another version, where the request is about several things.</param>
    public static Problem Stale(EntityTags? yours, EntityTagHeaderValue? current, ValueList<ProblemThing>? things = null) => Problems.Stale(
        current is null
            ? "What you expected is not there any more; read again what is."
            : yours is null
                ? "It is there already; read it, and send If-Match with its ETag to replace it."
                : "It was changed since you read it; read it again, and make your change to what is there now.",
        yours?.ToString(),
        current?.Tag.ToString(),
        things);

    public static Problem Exists(string word, Id id) => Problems.Conflict(
        $"There is a {word} '{id}' already; choose another id, or replace it by PUT with If-Match.");

    public static Problem OtherId(string id) => Problems.Invalid("$.id", Id.IsValid(id)
        ? $"The address ends with '{id}'; write the same here, or leave the id out. An id never changes."
        : $"'{id}' in the address can't be an id; ids are 1 to {Id.MaximumLength} letters, digits, dots, dashes and underscores.");

    public static Problem KeptForEver() => Problems.Conflict(
        "A told date is kept for ever, as it was said; add the new date beside it. If it was a slip, undo the change that added it.");

    public static Problem NothingAccepted() => Problems.NotFound("No plan is accepted; accept one by POST to plan/accept.");

    public static Problem NoBase() => Problems.PreconditionRequired(
        "Give 'base', the version of the workshop that the changes were made from, or If-Match with the workshop's ETag.");

    public static Problem BaseAndMatch() => Problems.Invalid(
        "$.base",
        "Give either 'base' or If-Match: the one asks that what the changes touch is unchanged, the other that all is.");

    public static Problem BaseToCome(long now) => Problems.Invalid("$.base", $"Write the version that you read, {now} at most.");
}
