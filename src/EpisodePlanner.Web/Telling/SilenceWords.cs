using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>Silences in words.</summary>
internal static class SilenceWords
{
    public static string First(Outlook outlook, SilenceAhead alarm, Plan plan, PlanNames names)
    {
        var subject = Capital(outlook.Name);
        var beyond = Period.DaysBetween(alarm.Due, names.Today);
        var now = beyond > 0
            ? $"{subject} is too quiet already: {Words.Days(outlook.DaysSilent ?? 0)} since its last upload, {Words.Days(beyond)} beyond. It promises {Promise(outlook)}."
            : $"{subject} promises {Promise(outlook)}, so an upload is due by {names.Day(alarm.Due)}.";
        return $"{now} {Ending(outlook, alarm, plan, names)}";
    }

    /// <summary>"To be foreseen since Monday 16 November, when “test the mast” had failed."</summary>
    public static string Foreseen(ForeseenSince since, PlanNames names)
    {
        var day = names.Day(names.DateOf(since.Since));
        if (since.IsAtLeast)
        {
            return $"To be foreseen since {day} at the latest.";
        }

        var failed = since.Failed.Count == 0 ? "" : $"; {string.Join(", ", since.Failed.Select(PlanNames.Quote))} failed shortly before";
        return $"To be foreseen since {day}{failed}.";
    }

    public static string Again(SilenceAhead alarm, Plan plan, PlanNames names) => alarm.Ends is { } day
        ? $"{names.ShortDay(day)}{By(alarm, plan)} {Words.Days(alarm.DaysOver)} beyond"
        : $"after {names.ShortDay(alarm.Due)}";

    public static string Promise(Outlook outlook)
    {
        var said = outlook.Promise.UploadsPerMonth is { } each
            ? each == 1 ? "1 upload a month" : $"{each} uploads a month"
            : Words.Days(outlook.Promise.LongestSilenceDays!.Value);
        var silence = outlook.Promise.UploadsPerMonth is null ? " of silence at most" : "";
        return outlook.PromiseAssumed ? $"{said}{silence} (assumed)" : $"{said}{silence}";
    }

    public static string Capital(string name) => name.Length > 0 ? char.ToUpperInvariant(name[0]) + name[1..] : name;

    private static string Ending(Outlook outlook, SilenceAhead alarm, Plan plan, PlanNames names)
    {
        if (alarm.Ends is not { } day)
        {
            return "Nothing is planned that ends it.";
        }

        var silence = outlook.Forecast.FirstOrDefault(s => s.To == day);
        var days = silence is null ? "" : $"after {Words.Days(silence.Days)}, ";
        return $"The next upload{By(alarm, plan)} comes {names.Day(day)}: {days}{Words.Days(alarm.DaysOver)} beyond.";
    }

    private static string By(SilenceAhead alarm, Plan plan) =>
        plan.Episodes.FirstOrDefault(e => e.Id == alarm.Episode && alarm.Episode is not null) is { } episode
            ? $", {PlanNames.Title(episode)},"
            : "";
}
