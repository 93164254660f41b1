using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Writing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Texts;

/// <summary>The outline of an episode and the letter to supporters, to be read and taken along.</summary>
internal static class WrittenEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapWritten(this RouteGroupBuilder desk)
    {
        desk.MapGet("/letter", ShowLetter);
        desk.MapGet("/outline/{episode}", ShowOutline);
    }

    private static async Task<RazorComponentResult<WrittenPage>> ShowLetter(FoundDesk found, Desk desk, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        return Page(view, "Letter to supporters", DeskPage.Letter, Letter.Write(view.Plan).Markdown, $"/api/v1/workshops/{found.Now.Id}/letter");
    }

    private static async Task<RazorComponentResult<WrittenPage>> ShowOutline(
        FoundDesk found, string episode, Desk desk, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var id = Id.IsValid(episode) ? new Id(episode) : default;
        var title = found.Now.Workshop.Episodes.Find(id)?.Title ?? "No such episode";
        return Outline.Write(view.Plan, id) switch
        {
            Written written => Page(
                view, $"Outline: {title}", DeskPage.Story, written.Markdown, $"/api/v1/workshops/{found.Now.Id}/episodes/{id}/outline"),
            NotWritten not => Shown.As<WrittenPage>(
                StatusCodes.Status404NotFound,
                (nameof(WrittenPage.View), view),
                (nameof(WrittenPage.Title), title),
                (nameof(WrittenPage.Current), DeskPage.Story),
                (nameof(WrittenPage.Missing), string.Join(" ", not.Reasons.Select(reason => reason.Says)))),
            _ => throw new InvalidOperationException("An outline is written or it is not."),
        };
    }

    private static RazorComponentResult<WrittenPage> Page(DeskView view, string title, DeskPage current, string markdown, string file) =>
        Shown.As<WrittenPage>(
            (nameof(WrittenPage.View), view),
            (nameof(WrittenPage.Title), title),
            (nameof(WrittenPage.Current), current),
            (nameof(WrittenPage.Html), SafeHtml.Of(markdown)),
            (nameof(WrittenPage.Markdown), markdown),
            (nameof(WrittenPage.File), file));
}
