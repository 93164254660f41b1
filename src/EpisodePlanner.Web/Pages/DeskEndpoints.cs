using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.AllSeries;
using EpisodePlanner.Web.Features.Bench;
using EpisodePlanner.Web.Features.Cadences;
using EpisodePlanner.Web.Features.CouldPublish;
using EpisodePlanner.Web.Features.Editing;
using EpisodePlanner.Web.Features.History;
using EpisodePlanner.Web.Features.Now;
using EpisodePlanner.Web.Features.Setup;
using EpisodePlanner.Web.Features.Silences;
using EpisodePlanner.Web.Features.Stations;
using EpisodePlanner.Web.Features.Story;
using EpisodePlanner.Web.Features.Supposes;
using EpisodePlanner.Web.Features.Texts;
using EpisodePlanner.Web.Features.Why;
using EpisodePlanner.Web.Serving.Requests;

namespace EpisodePlanner.Web.Pages;

/// <summary>The pages of a workshop.</summary>
public static class DeskEndpoints
{
    /// <summary>The parameter of the path that names the workshop.</summary>
    public const string WorkshopParameter = "workshop";

    /// <summary>Adds what the pages need beside the stores and the API.</summary>
    /// <param name="services">Where it is added.</param>
    /// <param name="patience">How long a page waits for the further plans that weigh things.</param>
    public static IServiceCollection AddDesk(this IServiceCollection services, TimeSpan patience) =>
        services.AddSingleton(new Patience(patience)).AddSingleton<Desk>().AddSingleton<Editor>();

    /// <summary>Maps every page of a workshop.</summary>
    public static IEndpointRouteBuilder MapDesk(this IEndpointRouteBuilder endpoints)
    {
        var desk = endpoints.MapGroup($"/w/{{{WorkshopParameter}}}").AddEndpointFilter<ShowMissing>().ExcludeFromDescription();
        desk.MapNow();
        desk.MapBench();
        desk.MapSilences();
        desk.MapPublishNowPage();
        desk.MapStory();
        desk.MapSupposePage();
        desk.MapSeries();
        desk.MapStations();
        desk.MapWritten();
        desk.MapWhyPage();
        desk.MapCadencePage();
        desk.MapHistory();
        desk.MapSetup();
        desk.MapEditing();
        endpoints.MapPost($"/workshops/{{{WorkshopParameter}}}/restore", Restore).ExcludeFromDescription();
        return endpoints;
    }

    /// <summary>Brings a deleted workshop back; the form is looked at so that its token is.</summary>
    private static async Task<IResult> Restore(string workshop, IFormCollection form, WorkshopStore store, CancellationToken stop)
    {
        if (!Id.IsValid(workshop))
        {
            return Results.NotFound();
        }

        await store.Restore(new Id(workshop), Makers.Unknown, stop);
        return Results.LocalRedirect(new Paths(new Id(workshop)).Now);
    }
}
