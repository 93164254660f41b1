using System.Text.Json.Nodes;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Serving;

/// <summary>Why a request is not carried out, as problem details (RFC 9457).</summary>
/// <param name="problem">The kind of problem.</param>
/// <param name="detail">What is wrong this time, and what would be right.</param>
internal sealed class Refusal(Problem problem, string detail) : IResult
{
    /// <summary>Whether something else was there than was expected.</summary>
    public bool IsStale => problem == Problem.Stale;

    /// <summary>Everything that is wrong, each with its place.</summary>
    public IReadOnlyList<Reason> Errors { get; init; } = [];

    /// <summary>Further members of the problem.</summary>
    public JsonObject More { get; init; } = [];

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var body = new JsonObject
        {
            ["type"] = $"/problems/{problem.Name}",
            ["title"] = problem.Title,
            ["status"] = problem.Status,
            ["detail"] = detail,
        };
        if (Errors.Count > 0)
        {
            body["errors"] = new JsonArray([.. Errors.Select(e => new JsonObject { ["where"] = e.Where, ["says"] = e.Says })]);
        }

        foreach (var (name, value) in More)
        {
            body[name] = value?.DeepClone();
        }

        httpContext.Response.StatusCode = problem.Status;
        httpContext.Response.ContentType = "application/problem+json";
        await httpContext.Response.WriteAsync(body.ToJsonString(), httpContext.RequestAborted);
    }
}
