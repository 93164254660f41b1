using Microsoft.AspNetCore.Antiforgery;

namespace EpisodePlanner.Web.Serving;

/// <summary>Refuses a form whose token does not belong to the browser that sends it; the check itself came before.</summary>
internal sealed class FormGuard(RequestDelegate next)
{
    public Task Invoke(HttpContext context) => context.Features.Get<IAntiforgeryValidationFeature>() is { IsValid: false }
        ? Problems.Of(ProblemTypes.NoToken).ExecuteAsync(context)
        : next(context);
}
