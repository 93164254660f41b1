using EpisodePlanner.Planning;
using static Microsoft.AspNetCore.Http.StatusCodes;

namespace EpisodePlanner.Web.Serving;

/// <summary>Every kind of problem the server knows: the one table behind all refusals and their explanations.</summary>
public static class ProblemTypes
{
    /// <summary>Where the explanations are.</summary>
    public const string Folder = "/problems";

    /// <summary>What was sent can be read, and is wrong.</summary>
    public static ProblemType Invalid { get; } = new(
        "invalid", Status400BadRequest, "What was sent is not right",
        "The request could be read, but what it says breaks a rule. 'errors' names every place at once, as a JSON path into "
        + "what was sent, with a sentence that says what would be right. Nothing was changed.");

    /// <summary>The request is no sound HTTP, or its parts can't be read.</summary>
    public static ProblemType Malformed { get; } = new(
        "malformed", Status400BadRequest, "The request can't be read",
        "The address, a header or the body has a form that can't be read. 'detail' says which, where it is known.");

    /// <summary>A form was sent without the token that this server gave with it.</summary>
    public static ProblemType NoToken { get; } = new(
        "no-token", Status400BadRequest, "The form carries no valid token",
        "A form must be sent with the token and the cookie that came with it. Open the page again and send the form from there; "
        + "where cookies are off, allow them for this address.");

    /// <summary>Another web site asked a browser to change something here.</summary>
    public static ProblemType RefusedOrigin { get; } = new(
        "refused-origin", Status403Forbidden, "Asked for by another site",
        "A browser sent this on behalf of a page that does not come from this server (Sec-Fetch-Site, Origin). Changes are only "
        + "made for pages of this server, and for programs that are no browsers.");

    /// <summary>There is nothing at this address.</summary>
    public static ProblemType NotFound { get; } = new(
        "not-found", Status404NotFound, "There is nothing here",
        "The address names something that does not exist. 'detail' says which part of it.");

    /// <summary>The address does not do what was asked.</summary>
    public static ProblemType WrongMethod { get; } = new(
        "wrong-method", Status405MethodNotAllowed, "Not with this method",
        "The address exists, but not for this method; the header Allow names those it has.");

    /// <summary>None of the forms that were asked for is there.</summary>
    public static ProblemType NotAcceptable { get; } = new(
        "not-acceptable", Status406NotAcceptable, "Not in this form",
        "The header Accept names no form in which this can be had; 'detail' names those that are there.");

    /// <summary>The request took too long to arrive.</summary>
    public static ProblemType TimedOut { get; } = new(
        "timed-out", Status408RequestTimeout, "The request took too long to arrive",
        "The body came too slowly. Nothing was changed; send it again.");

    /// <summary>What was asked for does not go with what is there.</summary>
    public static ProblemType Conflict { get; } = new(
        "conflict", Status409Conflict, "It does not go with what is there",
        "What was asked for can't be done as things stand, for example because something has that id already, or because there "
        + "is nothing to undo. 'detail' says what stands in the way.");

    /// <summary>What the address names was deleted.</summary>
    public static ProblemType Gone { get; } = new(
        "gone", Status410Gone, "It was deleted",
        "What the address names was deleted at the moment in 'since'. A POST to the address in 'restore' brings it back, for 30 "
        + "days.");

    /// <summary>Somebody else was quicker.</summary>
    public static ProblemType Stale { get; } = new(
        "stale", Status412PreconditionFailed, "Somebody else was quicker",
        "It was changed since you read it: 'yours' is the version you named, 'current' the one that is there; 'things' names what "
        + "was changed, where it is more than one thing. Nothing was changed. Read it again, look at both, and send yours again "
        + "with the current version in If-Match.");

    /// <summary>The body is larger than is taken here.</summary>
    public static ProblemType TooLarge { get; } = new(
        "too-large", Status413PayloadTooLarge, "Too large",
        "A body may have 1 MB, an import 10 MB.");

    /// <summary>The address is longer than any that is here.</summary>
    public static ProblemType AddressTooLong { get; } = new(
        "address-too-long", Status414UriTooLong, "The address is too long",
        "An address may have 4,096 characters, its query included.");

    /// <summary>The body comes in a form that is not read here.</summary>
    public static ProblemType UnsupportedMedia { get; } = new(
        "unsupported-media", Status415UnsupportedMediaType, "Not in this media type",
        "The header Content-Type names a form that is not read here; JSON is sent as application/json, in UTF-8.");

    /// <summary>The server is not known by the name it was called.</summary>
    public static ProblemType UnknownHost { get; } = new(
        "unknown-host", Status421MisdirectedRequest, "Not the server of this name",
        "The header Host names a server that this one does not answer for. Names it should answer for, beside its own loopback "
        + "address, are listed in EPISODE_PLANNER_HOSTS.");

    /// <summary>What was asked for breaks the rules of the workshop.</summary>
    public static ProblemType BrokenRules { get; } = new(
        "broken-rules", Status422UnprocessableEntity, "The workshop would not be sound",
        "What was sent can be read, and does not fit the workshop as it is: something it refers to is not there, links would "
        + "close a circle, or another rule that spans things is broken. 'errors' names every place at once, as a JSON path into "
        + "the workshop, with a sentence that says what would be right. Nothing was changed.");

    /// <summary>The key of the request belongs to another one.</summary>
    public static ProblemType KeyReused { get; } = new(
        "key-reused", Status422UnprocessableEntity, "The key belongs to another request",
        "The Idempotency-Key was used within the last day for a request with another body. A new request needs a new key; only "
        + "a repetition of the very same request may carry the old one.");

    /// <summary>The request must say which version it means.</summary>
    public static ProblemType PreconditionRequired { get; } = new(
        "precondition-required", Status428PreconditionRequired, "Say which version you mean",
        "A change of something that exists must carry If-Match with the ETag it was read with, so that nobody's change is lost "
        + "unseen; a creation under a chosen id carries If-None-Match: *; a batch may name its 'base' instead.");

    /// <summary>The planner met something it should have been ready for.</summary>
    public static ProblemType Internal { get; } = new(
        "internal", Status500InternalServerError, "The planner failed",
        "This is the planner's own fault, not the request's. The log of the server has the details under the number in 'trace'.");

    /// <summary>The database can't do its work now.</summary>
    public static ProblemType StorageUnavailable { get; } = new(
        "storage-unavailable", Status503ServiceUnavailable, "The database can't do its work now",
        "Nothing was changed. 'detail' says what is wrong and what would help; the header Retry-After says when to ask again. "
        + "The server recovers by itself once the database does.");

    /// <summary>The answer took longer than a request may.</summary>
    public static ProblemType TooSlow { get; } = new(
        "too-slow", Status503ServiceUnavailable, "It took too long",
        "The server gave up after the time that a request may take. Ask again later, or for less at once.");

    /// <summary>All of them, by status.</summary>
    public static ValueList<ProblemType> All { get; } =
    [
        Invalid, Malformed, NoToken, RefusedOrigin, NotFound, WrongMethod, NotAcceptable, TimedOut, Conflict, Gone, Stale,
        TooLarge, AddressTooLong, UnsupportedMedia, UnknownHost, BrokenRules, KeyReused, PreconditionRequired, Internal,
        StorageUnavailable, TooSlow,
    ];

    /// <summary>The kind with a name, or null.</summary>
    public static ProblemType? Find(string name) => All.FirstOrDefault(type => type.Name == name);

    /// <summary>The kind behind a bare status that some part of the server answered with.</summary>
    public static ProblemType ForStatus(int status) =>
        status == Status400BadRequest ? Malformed
        : All.FirstOrDefault(type => type.Status == status) ?? (status < Status500InternalServerError ? Malformed : Internal);
}
