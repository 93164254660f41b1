using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Serving;

/// <summary>Makes every refusal of the server a problem, and explains each kind under its address.</summary>
public static class ProblemHandling
{
    /// <summary>What handles exceptions.</summary>
    public static IServiceCollection AddProblems(this IServiceCollection services) =>
        services.AddSingleton<Readiness>().AddExceptionHandler<ProblemExceptions>();

    /// <summary>Exceptions, and bare statuses that any part of the server answers with, become problems.</summary>
    public static IApplicationBuilder UseProblems(this IApplicationBuilder app) => app
        .UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = _ => Task.CompletedTask })
        .UseStatusCodePages(context => Problems
            .Of(ProblemTypes.ForStatus(context.HttpContext.Response.StatusCode))
            .ExecuteAsync(context.HttpContext));

    /// <summary>The explanations.</summary>
    public static void MapProblems(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(ProblemTypes.Folder, () => new RazorComponentResult<ProblemListPage>()).ExcludeFromDescription();
        routes.MapGet($"{ProblemTypes.Folder}/{{name}}", Explain).ExcludeFromDescription();
    }

    private static IResult Explain(string name) => ProblemTypes.Find(name) is { } type
        ? ProblemPages.Of(type)
        : Problems.NotFound($"There is no kind of problem called '{name}'; {ProblemTypes.Folder} lists them.");
}
