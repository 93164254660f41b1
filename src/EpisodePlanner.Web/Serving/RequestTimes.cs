using Microsoft.AspNetCore.Http.Timeouts;

namespace EpisodePlanner.Web.Serving;

/// <summary>How long a request may take.</summary>
internal static class RequestTimes
{
    /// <summary>Ends every request after a time; endpoints stop at their token, and the answer says so.</summary>
    public static IServiceCollection AddRequestTimes(this IServiceCollection services, TimeSpan most) =>
        services.AddRequestTimeouts(times => times.DefaultPolicy = new RequestTimeoutPolicy
        {
            Timeout = most,
            WriteTimeoutResponse = context => Problems.Of(ProblemTypes.TooSlow, retryAfter: 5).ExecuteAsync(context),
        });
}
