namespace EpisodePlanner.Web.Serving;

/// <summary>What stands before every endpoint.</summary>
internal static class Guards
{
    /// <summary>The names that the server answers for.</summary>
    public static IServiceCollection AddGuards(this IServiceCollection services, HostNames hosts) => services.AddSingleton(hosts);

    /// <summary>Who is asked, how long, and by whom; before anything looks for an endpoint.</summary>
    public static IApplicationBuilder UseRequestGuards(this IApplicationBuilder app) => app
        .UseMiddleware<HostGuard>()
        .UseMiddleware<AddressGuard>()
        .UseMiddleware<OriginGuard>();

    /// <summary>Headers on every answer.</summary>
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.UseMiddleware<SecurityHeaders>();

    /// <summary>Forms carry their token; after the endpoint is known, because it says whether it takes a form.</summary>
    public static IApplicationBuilder UseFormGuard(this IApplicationBuilder app)
    {
        app.UseAntiforgery();
        return app.UseMiddleware<FormGuard>();
    }
}
