using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.ConditionalRequests;

/// <summary>What the preconditions of a request come to (RFC 9110 §13.2.2).</summary>
public enum Verdict
{
    /// <summary>The request is to be answered.</summary>
    Holds,

    /// <summary>The client has what a read would give: 304.</summary>
    NotModified,

    /// <summary>Something else is there than was expected: 412.</summary>
    Failed,
}

/// <summary>The preconditions of a request by entity tags.</summary>
/// <param name="IfMatch">What must be there; null where the header is absent.</param>
/// <param name="IfNoneMatch">What must not be there; null where the header is absent.</param>
public sealed record Conditions(EntityTags? IfMatch, EntityTags? IfNoneMatch)
{
    /// <summary>Whether a change is guarded against losing somebody else's: it names what it replaces, or that nothing is there.</summary>
    public bool Guard => IfMatch is not null || IfNoneMatch is { IsAny: true };

    /// <summary>Evaluates them in the order of RFC 9110 §13.2.2: If-Match first, then If-None-Match.</summary>
    /// <param name="current">The tag of what is there; null where nothing is.</param>
    /// <param name="isRead">Whether the request is a GET or HEAD.</param>
    public Verdict Judge(EntityTagHeaderValue? current, bool isRead)
    {
        if (IfMatch is not null && !IfMatch.MatchStrongly(current))
        {
            return Verdict.Failed;
        }

        return IfNoneMatch is not null && IfNoneMatch.MatchWeakly(current)
            ? isRead ? Verdict.NotModified : Verdict.Failed
            : Verdict.Holds;
    }

    /// <summary>Reads the headers of a request.</summary>
    /// <returns>False, with the header's name, where one of them can't be understood.</returns>
    public static bool TryRead(IHeaderDictionary headers, out Conditions conditions, out string broken)
    {
        var ifMatch = EntityTags.TryRead(headers.IfMatch, out var match);
        var ifNoneMatch = EntityTags.TryRead(headers.IfNoneMatch, out var noneMatch);
        conditions = new Conditions(match, noneMatch);
        broken = !ifMatch ? HeaderNames.IfMatch : !ifNoneMatch ? HeaderNames.IfNoneMatch : "";
        return broken.Length == 0;
    }
}
