using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Cadences;

/// <summary>Makes the document of a cadence.</summary>
internal static class CadenceDocuments
{
    /// <summary>The document.</summary>
    public static CadenceDocument Of(Cadence cadence) => new()
    {
        PlannedAt = new DocumentValues(cadence.Plan.Zone).Moment(cadence.Plan.Request.PlannedAt),
        KeptHoursAWeek = Rounded(cadence.Kept.HoursAWeek),
        OpenHoursAWeek = Rounded(cadence.Kept.OpenHoursAWeek),
        LogWeeks = cadence.Kept.Weeks,
        Loading = cadence.Loading,
        UploadsAWeek = cadence.UploadsAWeek is { } rate ? Rounded(rate) : null,
        SlotsAYear = cadence.SlotsAYear,
        Together = Of(cadence.Together),
        BreaksFirst = DocumentValues.Name(cadence.Breaks?.Series),
        BreaksAfter = DocumentValues.Day(cadence.Breaks?.Due),
        Nearest = [.. cadence.Nearest.Select(promise => new NearerEntry($"{promise.Series}", promise.Days, promise.More))],
        Series = [.. cadence.Series.Select(Of)],
        Resting = [.. cadence.Resting.Select(resting => new RestingEntry($"{resting.Rests}", Of(resting.Then)))],
    };

    private static CostEntry Of(SeriesCadence series) => new(
        $"{series.Series.Id}",
        series.Days,
        series.Slots,
        Rounded(series.BenchHours),
        Rounded(series.TailHours),
        series.Episodes,
        Rounded(series.HoursAWeek));

    private static TogetherEntry Of(PromisesTogether together) => new(
        together.Hold,
        together.SlotsSuffice,
        together.NoRotation,
        together.HandsSuffice,
        Rounded(together.HoursAWeek),
        [.. together.Rotation.Select(id => $"{id}")]);

    private static decimal Rounded(decimal hours) => decimal.Round(hours, 2);
}
