using EpisodePlanner.Planning;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Serving;

/// <summary>Says every problem in one form.</summary>
public static class Problems
{
    /// <summary>A problem of a kind, with a sentence of its own.</summary>
    /// <param name="type">The kind.</param>
    /// <param name="detail">What is wrong this time, and what would be right; the kind's explanation where null.</param>
    /// <param name="retryAfter">After how many seconds to ask again.</param>
    public static Problem Of(ProblemType type, string? detail = null, int? retryAfter = null) =>
        new(Document(type, detail ?? type.Explanation), retryAfter);

    /// <summary>What was sent breaks rules.</summary>
    /// <param name="reasons">Everything that is wrong; at least one.</param>
    public static Problem Invalid(IReadOnlyCollection<Reason> reasons) => new(Document(ProblemTypes.Invalid, Count(reasons)) with
    {
        Errors = reasons.Select(reason => new ProblemError(reason.Where, reason.Says)).ToValueList(),
    });

    /// <summary>What was sent is wrong in one place.</summary>
    /// <param name="where">The place, a JSON path, or the name of a header or of a part of the address.</param>
    /// <param name="says">What is wrong, and what would be right.</param>
    public static Problem Invalid(string where, string says) => Invalid([new Reason(where, says)]);

    /// <summary>What was asked for breaks the rules of the workshop.</summary>
    /// <param name="reasons">Everything that speaks against it; at least one.</param>
    public static Problem Broken(IReadOnlyCollection<Reason> reasons) => new(Document(ProblemTypes.BrokenRules, Count(reasons)) with
    {
        Errors = reasons.Select(reason => new ProblemError(reason.Where, reason.Says)).ToValueList(),
    });

    /// <summary>There is nothing at the address.</summary>
    public static Problem NotFound(string detail) => Of(ProblemTypes.NotFound, detail);

    /// <summary>What the address names was deleted.</summary>
    /// <param name="what">What it is, as the subject of a sentence: "The task 'weld'".</param>
    /// <param name="since">When it was deleted.</param>
    /// <param name="restore">Where a POST brings it back.</param>
    public static Problem Gone(string what, Instant since, string restore)
    {
        var moment = InstantPattern.General.Format(since);
        return new(Document(ProblemTypes.Gone, $"{what} was deleted at {moment}; a POST to {restore} brings it back.") with
        {
            Since = moment,
            Restore = restore,
        });
    }

    /// <summary>The thing at the address has another version than the request named.</summary>
    /// <param name="detail">What it is and what to do.</param>
    /// <param name="yours">The version the request named, as it named it.</param>
    /// <param name="current">The version that is there, as an ETag; null where there is none.</param>
    /// <param name="things">What was changed meanwhile, where it is more than the thing at the address.</param>
    public static Problem Stale(string detail, string? yours, string? current, ValueList<ProblemThing>? things = null) =>
        new(Document(ProblemTypes.Stale, detail) with { Yours = yours, Current = current, Things = things });

    /// <summary>The request must name the version it means.</summary>
    public static Problem PreconditionRequired(string detail) => Of(ProblemTypes.PreconditionRequired, detail);

    /// <summary>The key of the request belongs to another one.</summary>
    public static Problem KeyReused() => Of(ProblemTypes.KeyReused);

    /// <summary>What was asked for does not go with what is there.</summary>
    public static Problem Conflict(string detail) => Of(ProblemTypes.Conflict, detail);

    /// <summary>The planner failed.</summary>
    /// <param name="trace">The number under which the log tells more.</param>
    public static Problem Internal(string trace) => new(Document(ProblemTypes.Internal, ProblemTypes.Internal.Explanation) with
    {
        Trace = trace,
    });

    private static ProblemDocument Document(ProblemType type, string detail) => new()
    {
        Type = type.Address,
        Title = type.Title,
        Status = type.Status,
        Detail = detail,
    };

    private static string Count(IReadOnlyCollection<Reason> reasons) => reasons.Count == 1
        ? reasons.First().Says
        : $"{reasons.Count} things are wrong; 'errors' names them all. Nothing was changed.";
}
