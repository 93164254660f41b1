using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Pictures;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>The stories of all series.</summary>
internal static class StoryEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapStory(this RouteGroupBuilder desk)
    {
        desk.MapGet("/story", Show);
        desk.MapGet("/story/{series}/picture.{ending}", Draw);
    }

    private static async Task<RazorComponentResult<StoryPage>> Show(FoundDesk found, Desk desk, CancellationToken stop) =>
        Shown.As<StoryPage>((nameof(StoryPage.View), await desk.View(found.Now, found.Done, stop)));

    private static async Task<IResult> Draw(
        FoundDesk found, string series, string ending, string? theme, Desk desk, CancellationToken stop)
    {
        var plan = (await desk.View(found.Now, null, stop)).Plan;
        return Id.IsValid(series) && plan.Request.Workshop.Series.Find(new Id(series)) is { } known
            ? PictureFile.Of(StoryPicture.Draw(plan, known, "story"), ending, theme, $"story-{series}")
            : Results.NotFound();
    }
}
