using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Serving;

/// <summary>Shows problems to people.</summary>
internal static class ProblemPages
{
    /// <summary>Whether a person sits in front: a browser asks for a page, outside of what is for programs.</summary>
    public static bool IsAskedForBy(HttpRequest request) =>
        request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase)
        && !request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);

    /// <summary>A problem as a page.</summary>
    public static IResult Of(ProblemDocument problem) => Page(
        problem.Title, problem.Detail, problem.Status, problem.Type[(ProblemTypes.Folder.Length + 1)..], problem.Trace);

    /// <summary>What a kind of problem means.</summary>
    public static IResult Of(ProblemType type) => Page(type.Title, type.Explanation, StatusCodes.Status200OK, type.Name, null, type.Status);

    private static RazorComponentResult<ProblemPage> Page(
        string title, string detail, int status, string name, string? trace, int? shown = null) =>
        new(new { Title = title, Detail = detail, Status = shown ?? status, Name = name, Trace = trace })
        {
            StatusCode = status,
            PreventStreamingRendering = true,
        };
}
