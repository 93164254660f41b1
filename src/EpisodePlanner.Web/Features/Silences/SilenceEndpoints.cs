using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Pictures;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Silences;

/// <summary>The silences of every series.</summary>
internal static class SilenceEndpoints
{
    private const int UsualWeeks = 26;
    private const int MostWeeks = 104;

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSilences(this RouteGroupBuilder desk)
    {
        desk.MapGet("/silence", Show);
        desk.MapGet("/silence/picture.{ending}", Draw);
    }

    private static async Task<RazorComponentResult<SilencePage>> Show(FoundDesk found, int? weeks, Desk desk, CancellationToken stop) =>
        Shown.As<SilencePage>(
            (nameof(SilencePage.View), await desk.View(found.Now, found.Done, stop)), (nameof(SilencePage.Weeks), Weeks(weeks)));

    private static async Task<IResult> Draw(
        FoundDesk found, string ending, int? weeks, string? theme, Desk desk, CancellationToken stop)
    {
        var plan = (await desk.View(found.Now, null, stop)).Plan;
        var picture = SilencePicture.Draw(plan, SilenceView.Around(plan, Weeks(weeks), BenchView.Desk), "silence");
        return PictureFile.Of(picture, ending, theme, "silence");
    }

    private static int Weeks(int? asked) => Math.Clamp(asked ?? UsualWeeks, 4, MostWeeks);
}
