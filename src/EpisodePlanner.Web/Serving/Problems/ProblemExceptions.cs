using EpisodePlanner.Data;
using Microsoft.AspNetCore.Diagnostics;

namespace EpisodePlanner.Web.Serving;

/// <summary>Turns what endpoints throw into problems; a stack trace goes to the log and nowhere else.</summary>
internal sealed partial class ProblemExceptions(Readiness readiness, ILogger<ProblemExceptions> log) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        await Of(exception, httpContext).ExecuteAsync(httpContext).ConfigureAwait(false);
        return true;
    }

    private Problem Of(Exception exception, HttpContext context)
    {
        switch (exception)
        {
            case StorageTroubleException met:
                var trouble = readiness.CauseOf(met);
                LogTrouble(trouble.Trouble, trouble.Message);
                return StorageTroubles.Problem(trouble);
            case BadHttpRequestException bad:
                return OfRequest(bad);
            default:
                LogFailure(exception, context.Request.Method, context.GetEndpoint()?.DisplayName, context.TraceIdentifier);
                return Problems.Internal(context.TraceIdentifier);
        }
    }

    // The server's own sentences about what it can't read are kept; of limits ours say more.
    private static Problem OfRequest(BadHttpRequestException bad)
    {
        var type = ProblemTypes.ForStatus(bad.StatusCode);
        return type == ProblemTypes.Malformed ? Problems.Of(type, bad.Message) : Problems.Of(type);
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "The database can't do its work ({Trouble}): {Says}")]
    private partial void LogTrouble(StorageTrouble trouble, string says);

    [LoggerMessage(Level = LogLevel.Error, Message = "{Method} of {Endpoint} failed; trace {Trace}")]
    private partial void LogFailure(Exception exception, string method, string? endpoint, string trace);
}
