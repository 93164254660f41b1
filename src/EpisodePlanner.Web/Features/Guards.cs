using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Features;

/// <summary>From the preconditions of a request to what the store must find when it makes the change.</summary>
internal static class Guards
{
    /// <summary>
    /// What no store finds: where a request with a key fails its preconditions, the store still has to see whether it is
    /// the repetition of one that did not.
    /// </summary>
    private static Expectation Never { get; } = new Expectation.WorkshopAt([0]);

    /// <summary>The tag of an aggregate; null where it does not exist.</summary>
    public static EntityTagHeaderValue? TagOf(Snapshot now, Aggregate what) =>
        now.VersionOf(what) is { } version ? EntityTags.Of(version) : null;

    /// <summary>
    /// Evaluates preconditions about an aggregate on the workshop as it is read, and says what must still be so when the
    /// change is made, so that nobody who is quicker is overwritten.
    /// </summary>
    /// <returns>Why the request is refused now, or null.</returns>
    public static Problem? Judge(Conditions conditions, Snapshot now, Aggregate what, out Expectation expects)
    {
        var tag = TagOf(now, what);
        var holds = conditions.Judge(tag, isRead: false) == Verdict.Holds;
        expects = !holds ? Never
            : tag is null ? new Expectation.Absent(what)
            : new Expectation.Present(what, conditions.IfMatch is { IsAny: false } tags ? tags.Versions : []);
        return holds ? null : Refusals.Stale(conditions.IfMatch, tag);
    }

    /// <summary>The same for the whole workshop.</summary>
    public static Problem? Judge(Conditions conditions, Snapshot now, out Expectation expects)
    {
        var tag = EntityTags.Of(now.Version);
        var holds = conditions.Judge(tag, isRead: false) == Verdict.Holds;
        expects = !holds ? Never
            : conditions.IfMatch is { IsAny: false } tags ? new Expectation.WorkshopAt(tags.Versions)
            : Expectation.None;
        return holds ? null : Refusals.Stale(conditions.IfMatch, tag);
    }
}
