namespace EpisodePlanner.Web.Serving;

/// <summary>A content security policy of an endpoint's own, in the place of the server's.</summary>
/// <param name="Policy">The policy, as it stands in the header.</param>
public sealed record ContentPolicy(string Policy)
{
    /// <summary>Pages of this server alone: own files, no inline script, no inline style, in nobody's frame.</summary>
    public static ContentPolicy Own { get; } = new(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
}

/// <summary>Puts on every answer, refusals included, what keeps a browser from doing more with it than was meant.</summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    public Task Invoke(HttpContext context)
    {
        // Late, because a refusal clears the headers that were set before it.
        context.Response.OnStarting(Write, context);
        return next(context);
    }

    private static Task Write(object state)
    {
        var context = (HttpContext)state;
        var headers = context.Response.Headers;
        var policy = context.GetEndpoint()?.Metadata.GetMetadata<ContentPolicy>() ?? ContentPolicy.Own;
        headers.ContentSecurityPolicy = policy.Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), payment=(), usb=()";
        return Task.CompletedTask;
    }
}
