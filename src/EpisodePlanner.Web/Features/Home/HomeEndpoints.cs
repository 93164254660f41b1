using EpisodePlanner.Data;
using EpisodePlanner.Web.Features.BringIn;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.Home;

/// <summary>The first page, and its form.</summary>
internal static class HomeEndpoints
{
    private const string Path = "/";

    /// <summary>Adds what they need.</summary>
    public static IServiceCollection AddHome(this IServiceCollection services) => services.AddSingleton<HomeDesk>();

    /// <summary>Maps them.</summary>
    public static void MapHome(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Path, Show).ExcludeFromDescription();
        routes.MapPost(Path, Begin).ExcludeFromDescription();
        routes.MapBringIn();
    }

    private static async Task<RazorComponentResult<HomePage>> Show(HomeDesk desk, CancellationToken stop) =>
        Page(new HomeModel(await desk.Lines(stop), HomeForm.Empty.Fields([])), StatusCodes.Status200OK);

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<HomePage>>> Begin(
        [FromForm] string? name, [FromForm] string? zone, WorkshopStore store, HomeDesk desk, CancellationToken stop)
    {
        var form = new HomeForm(name ?? "", zone ?? "");
        var workshop = form.ToWorkshop();
        return await store.Create(workshop, Makers.Of(workshop), null, stop) switch
        {
            Broken broken => Page(new HomeModel(await desk.Lines(stop), form.Fields(broken.Reasons)), StatusCodes.Status422UnprocessableEntity),
            Made made => TypedResults.LocalRedirect(new Paths(made.Now.Id).Series),
            _ => throw new InvalidOperationException("A workshop without a key is begun or refused."),
        };
    }

    private static RazorComponentResult<HomePage> Page(HomeModel model, int status) =>
        new(new { Model = model }) { StatusCode = status, PreventStreamingRendering = true };
}
