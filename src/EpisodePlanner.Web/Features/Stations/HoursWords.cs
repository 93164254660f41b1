using System.Globalization;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Stations;

/// <summary>Open hours in words.</summary>
public static class HoursWords
{
    /// <summary>"Tue and Thu 19:00 to 22:00; 2 dated exceptions".</summary>
    /// <param name="hours">The hours; null or empty where none are given.</param>
    /// <param name="none">What is said then.</param>
    public static string Of(OpenHours? hours, string none)
    {
        if (hours is null || (hours.Weekly.Count == 0 && hours.Dated.Count == 0))
        {
            return none;
        }

        var weekly = hours.Weekly.Select(w => $"{Days(w.Days)} {Words.Time(w.From)} to {Words.Time(w.To)}");
        var exceptions = hours.Dated.Count + hours.Busy.Count;
        return string.Join("; ", exceptions == 0 ? weekly : weekly.Append(exceptions == 1 ? "1 exception" : $"{exceptions} exceptions"));
    }

    private static string Days(IEnumerable<IsoDayOfWeek> days)
    {
        var names = days.Order().Select(day => CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedDayNames[(int)day % 7]).ToList();
        return names.Count <= 1 ? string.Concat(names) : $"{string.Join(", ", names[..^1])} and {names[^1]}";
    }
}
