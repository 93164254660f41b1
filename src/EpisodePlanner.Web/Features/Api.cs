using System.Text.Json.Serialization;
using EpisodePlanner.Web.Features.Cadences;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Features.CouldPublish;
using EpisodePlanner.Web.Features.Deleted;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Proofs;
using EpisodePlanner.Web.Features.Reference;
using EpisodePlanner.Web.Features.Silences;
using EpisodePlanner.Web.Features.Story;
using EpisodePlanner.Web.Features.Supposes;
using EpisodePlanner.Web.Features.Texts;
using EpisodePlanner.Web.Features.Things;
using EpisodePlanner.Web.Features.Transfer;
using EpisodePlanner.Web.Features.Whole;
using EpisodePlanner.Web.Features.Why;
using EpisodePlanner.Web.Features.Workshops;
using EpisodePlanner.Web.Serving.Requests;

namespace EpisodePlanner.Web.Features;

/// <summary>The API: everything that other programs can ask.</summary>
public static class Api
{
    /// <summary>What every address of the API begins with.</summary>
    public const string Root = "/api/v1";

    /// <summary>Adds what the endpoints need beside the stores and a <see cref="TimeProvider"/>.</summary>
    public static IServiceCollection AddApi(this IServiceCollection services) => services
        .ConfigureHttpJsonOptions(options => options.SerializerOptions.NumberHandling = JsonNumberHandling.Strict)
        .AddReference()
        .AddSingleton<PlanDesk>()
        .AddSingleton<ProofDesk>()
        .AddSingleton<SupposeDesk>()
        .AddSingleton<Importing>();

    /// <summary>Maps every endpoint of the API.</summary>
    public static IEndpointRouteBuilder MapApi(this IEndpointRouteBuilder endpoints)
    {
        var api = endpoints.MapGroup(Root).AddEndpointFilter<RefuseArguments>();
        var workshop = api.MapGroup($"/workshops/{{{FoundWorkshop.Parameter}}}");
        api.MapWorkshops();
        api.MapImports();
        workshop.MapThings();
        workshop.MapSingles();
        workshop.MapChanges();
        workshop.MapDeleted();
        workshop.MapSupposes();
        workshop.MapTransfer();
        workshop.MapPlans();
        workshop.MapProofs();
        workshop.MapTexts();
        workshop.MapWhy();
        workshop.MapCuts();
        workshop.MapRemedies();
        workshop.MapPublishNow();
        workshop.MapCadence();
        endpoints.MapReference();
        return endpoints;
    }
}
