using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>A series in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="State">What it does now, in words.</param>
/// <param name="Next">Its next upload, in words.</param>
/// <param name="Left">Work left until that upload, in words.</param>
public sealed record SeriesLine(Id Id, string Name, string State, string Next, string Left)
{
    /// <summary>The series of a workshop, by name.</summary>
    public static IEnumerable<SeriesLine> Of(DeskView view) => view.Workshop.Series
        .OrderBy(series => series.Name, StringComparer.OrdinalIgnoreCase)
        .Select(series => Of(view.Plan, series));

    private static SeriesLine Of(Plan plan, Series series)
    {
        var next = plan.Episodes.FirstOrDefault(episode => episode.Series == series.Id);
        var silent = plan.Series.FirstOrDefault(outlook => outlook.Series == series.Id)?.DaysSilent;
        return new SeriesLine(
            series.Id,
            series.Name,
            StateOf(series, silent),
            next is null ? "nothing is left to show" : next.Date is { } day ? $"{Words.ShortDay(day)}, {next.Title}" : $"no date: {next.Title}",
            next is null ? "" : Words.Minutes(next.WorkMinutes));
    }

    private static string StateOf(Series series, int? silent) => series.State switch
    {
        SeriesState.Finished => "finished",
        SeriesState.Resting => series.RestingUntil is { } until ? $"resting until {Words.ShortDay(until)}" : "resting",
        _ => silent is { } days ? $"silent for {Words.Days(days)}" : "nothing is out yet",
    };
}
