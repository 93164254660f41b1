namespace EpisodePlanner.Web.Serving;

/// <summary>
/// Answers only under names that are known. A browser that was led here under a foreign name (DNS rebinding) would take
/// that name's pages and these for one site.
/// </summary>
internal sealed class HostGuard(RequestDelegate next, HostNames names)
{
    public Task Invoke(HttpContext context) => names.Include(context.Request.Host)
        ? next(context)
        : Problems.Of(ProblemTypes.UnknownHost).ExecuteAsync(context);
}
