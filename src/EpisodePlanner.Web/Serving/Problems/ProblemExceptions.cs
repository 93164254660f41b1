using EpisodePlanner.Data;
using Microsoft.AspNetCore.Diagnostics;

namespace EpisodePlanner.Web.Serving;

/// <summary>Turns what endpoints throw into problems; a stack trace goes to the log and nowhere else.</summary>
internal sealed class ProblemExceptions : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        await Of(exception, httpContext).ExecuteAsync(httpContext).ConfigureAwait(false);
        return true;
    }

    private static Problem Of(Exception exception, HttpContext context) => exception switch
    {
        StorageTroubleException trouble => StorageTroubles.Problem(trouble),
        BadHttpRequestException bad => OfRequest(bad),
        _ => Problems.Internal(context.TraceIdentifier),
    };

    // Kestrel's and the binder's own sentences are about bytes and parameters; those that say a limit are kept.
    private static Problem OfRequest(BadHttpRequestException bad)
    {
        var type = ProblemTypes.ForStatus(bad.StatusCode);
        return type == ProblemTypes.Malformed ? Problems.Of(type, bad.Message) : Problems.Of(type);
    }
}
