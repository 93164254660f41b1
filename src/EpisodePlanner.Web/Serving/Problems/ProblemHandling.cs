using System.Globalization;
using System.Text;

namespace EpisodePlanner.Web.Serving;

/// <summary>Makes every refusal of the server a problem, and explains each kind under its address.</summary>
public static class ProblemHandling
{
    /// <summary>What handles exceptions.</summary>
    public static IServiceCollection AddProblems(this IServiceCollection services) =>
        services.AddExceptionHandler<ProblemExceptions>();

    /// <summary>Exceptions, and bare statuses that any part of the server answers with, become problems.</summary>
    public static IApplicationBuilder UseProblems(this IApplicationBuilder app) => app
        .UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = _ => Task.CompletedTask })
        .UseStatusCodePages(context => Problems
            .Of(ProblemTypes.ForStatus(context.HttpContext.Response.StatusCode))
            .ExecuteAsync(context.HttpContext));

    /// <summary>The explanations.</summary>
    public static void MapProblems(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(ProblemTypes.Folder, () => TypedResults.Text(Contents())).ExcludeFromDescription();
        routes.MapGet($"{ProblemTypes.Folder}/{{name}}", Explain).ExcludeFromDescription();
    }

    private static IResult Explain(string name) => ProblemTypes.Find(name) is { } type
        ? TypedResults.Text(Explanation(type))
        : Problems.NotFound($"There is no kind of problem called '{name}'; {ProblemTypes.Folder} lists them.");

    private static string Explanation(ProblemType type) => $"{type.Title}\n\n{type.Status} {type.Name}\n\n{type.Explanation}\n";

    private static string Contents() => ProblemTypes.All
        .Aggregate(
            new StringBuilder("The problems this server answers with\n\n"),
            (text, type) => text.Append(CultureInfo.InvariantCulture, $"{type.Status} {type.Address}: {type.Title}\n"))
        .ToString();
}
