using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Pictures;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Features.Bench;

/// <summary>The bench, day by day.</summary>
internal static class BenchEndpoints
{
    private const int UsualDays = 28;
    private const int MostDays = 62;

    /// <summary>Maps it beneath a workshop.</summary>
    public static void MapBench(this RouteGroupBuilder desk)
    {
        desk.MapGet("/bench", Show);
        desk.MapGet("/bench/picture.{ending}", Draw);
    }

    private static async Task<RazorComponentResult<BenchPage>> Show(
        FoundDesk found, string? from, int? days, Desk desk, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var shown = View(view, from, days);
        return Shown.As<BenchPage>(
            (nameof(BenchPage.View), view), (nameof(BenchPage.First), shown.FirstDay), (nameof(BenchPage.Days), shown.Days));
    }

    private static async Task<IResult> Draw(
        FoundDesk found, string ending, string? from, int? days, string? theme, Desk desk, CancellationToken stop)
    {
        var view = await desk.View(found.Now, null, stop);
        return PictureFile.Of(BenchPicture.Draw(view.Plan, View(view, from, days), "bench", _ => null), ending, theme, "bench");
    }

    private static BenchView View(DeskView view, string? from, int? days)
    {
        var first = LocalDatePattern.Iso.Parse(from ?? "") is { Success: true } parsed
            ? parsed.Value
            : BenchView.RowOf(view.Plan.Now.LocalDateTime);
        return new BenchView(Within(view, first), Math.Clamp(days ?? UsualDays, 1, MostDays), BenchView.Desk);
    }

    /// <summary>A plan knows nothing before it was made and nothing beyond its horizon.</summary>
    private static LocalDate Within(DeskView view, LocalDate day)
    {
        var first = BenchView.RowOf(view.Plan.Now.LocalDateTime);
        return LocalDate.Max(first, LocalDate.Min(day, view.Plan.Horizon.InZone(view.Plan.Zone).Date.PlusDays(-1)));
    }
}
