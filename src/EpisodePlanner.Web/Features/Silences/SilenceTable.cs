using EpisodePlanner.Planning;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Silences;

/// <summary>An upload to come, or the open end after the last, in words.</summary>
/// <param name="Name">The series, or the channel.</param>
/// <param name="Upload">The day of the upload.</param>
/// <param name="Days">The silence that it ends.</param>
/// <param name="Promise">Whether the promise holds, and by how much not.</param>
public sealed record SilenceTable(string Name, string Upload, string Days, string Promise)
{
    /// <summary>The rows of a plan: by series, then by day.</summary>
    public static IEnumerable<SilenceTable> Of(Plan plan)
    {
        var names = new PlanNames(plan);
        return plan.Series.Append(plan.Channel).SelectMany(outlook => outlook.Forecast, (outlook, silence) => new SilenceTable(
            SilenceWords.Capital(outlook.Name),
            silence.To is { } day ? names.Day(day) : "nothing planned",
            silence.OpenEnded ? $"after {names.ShortDay(silence.From)}" : Words.Days(silence.Days),
            Against(outlook, silence)));
    }

    private static string Against(Outlook outlook, Silence silence) => (outlook.State, outlook.Promise.LongestSilenceDays) switch
    {
        (not SeriesState.Active, _) => "resting",
        (_, null) => "counted by the month",
        _ when silence.OpenEnded => "open",
        (_, { } promise) when silence.Days <= promise => "holds",
        (_, { } promise) => $"{Words.Days(silence.Days - promise)} beyond",
    };
}
