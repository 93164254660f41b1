using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Stations;

/// <summary>People, machines and places.</summary>
internal static class StationEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapStations(this RouteGroupBuilder desk) => desk.MapGet("/stations", Show);

    private static async Task<RazorComponentResult<StationsPage>> Show(FoundDesk found, Desk desk, CancellationToken stop) =>
        Shown.As<StationsPage>((nameof(StationsPage.View), await desk.View(found.Now, found.Done, stop)));
}
