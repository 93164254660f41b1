namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>Short ways to map and describe endpoints.</summary>
internal static class EndpointNaming
{
    /// <summary>Maps a read: GET, and HEAD as RFC 9110 §9.1 asks for.</summary>
    public static RouteHandlerBuilder MapRead(this IEndpointRouteBuilder endpoints, string pattern, Delegate handler)
    {
        endpoints.MapMethods(pattern, [HttpMethods.Head], handler).ExcludeFromDescription();
        return endpoints.MapGet(pattern, handler);
    }

    /// <summary>Says with which problems of its own a handler may refuse.</summary>
    public static RouteHandlerBuilder Refusing(this RouteHandlerBuilder endpoint, params ProblemType[] types) =>
        endpoint.WithMetadata(new Refuses(types));

    /// <summary>Gives an endpoint its operation id, a summary and what else is to be known.</summary>
    public static RouteHandlerBuilder Named(this RouteHandlerBuilder endpoint, string id, string summary, string? more = null)
    {
        endpoint.WithName(id).WithSummary(summary);
        return more is null ? endpoint : endpoint.WithDescription(more);
    }
}
