using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Serving;

/// <summary>Says whether the server lives, and whether it can do its work.</summary>
public static class Health
{
    /// <summary>Whether it runs at all.</summary>
    public const string Live = "/health/live";

    /// <summary>Whether its database is prepared and answers.</summary>
    public const string Ready = "/health/ready";

    /// <summary>Maps both.</summary>
    internal static void MapHealth(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Live, () => TypedResults.Text("It runs.\n")).ExcludeFromDescription();
        routes.MapGet(Ready, async (Storage storage, HttpResponse response, CancellationToken stop) =>
        {
            // What is wrong is thrown, and answered like any trouble of the database: 503, with the reason.
            await storage.Probe(stop);
            response.Headers.CacheControl = "no-store";
            return TypedResults.Text("It is ready.\n");
        }).ExcludeFromDescription();
    }
}
