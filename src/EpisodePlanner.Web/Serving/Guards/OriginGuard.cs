using Microsoft.Extensions.Primitives;

namespace EpisodePlanner.Web.Serving;

/// <summary>
/// Refuses every changing request that a browser sends for a page of another site. Browsers say so themselves, in
/// Sec-Fetch-Site and in Origin; programs that are no browsers send neither and pass.
/// </summary>
internal sealed class OriginGuard(RequestDelegate next)
{
    public Task Invoke(HttpContext context) => IsSafe(context.Request.Method) || IsOurs(context.Request)
        ? next(context)
        : Problems.Of(ProblemTypes.RefusedOrigin).ExecuteAsync(context);

    /// <summary>RFC 9110, 9.2.1, without CONNECT and what nobody has heard of.</summary>
    private static bool IsSafe(string method) =>
        HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private static bool IsOurs(HttpRequest request) =>
        IsOurSite(request.Headers["Sec-Fetch-Site"]) && IsOurOrigin(request.Headers.Origin, request.Host);

    /// <summary>"none" is the person in front: an address typed, a bookmark.</summary>
    private static bool IsOurSite(StringValues site) => site.Count == 0 || site is ["same-origin" or "none"];

    // The scheme is left out: behind a proxy with TLS the page has another one than this server sees.
    private static bool IsOurOrigin(StringValues origin, HostString host) => origin.Count == 0
        || (origin is [{ } text]
            && Uri.TryCreate(text, UriKind.Absolute, out var from)
            && from.Scheme is "http" or "https"
            && from.Host.Equals(host.Host, StringComparison.OrdinalIgnoreCase)
            && from.Port == (host.Port ?? UsualPort(from)));

    private static int UsualPort(Uri from) => from.Scheme == "https" ? 443 : 80;
}
