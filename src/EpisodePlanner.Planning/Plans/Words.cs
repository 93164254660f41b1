using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning;

/// <summary>Times and amounts in words, the same everywhere a person reads them.</summary>
public static class Words
{
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM");
    private static readonly LocalDatePattern ShortDayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");
    private static readonly LocalTimePattern TimePattern = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>"Friday 12 March".</summary>
    public static string Day(LocalDate day) => DayPattern.Format(day);

    /// <summary>"Fri 12 Mar".</summary>
    public static string ShortDay(LocalDate day) => ShortDayPattern.Format(day);

    /// <summary>"Fri 12 Mar 18:00".</summary>
    public static string Moment(ZonedDateTime moment) => $"{ShortDayPattern.Format(moment.Date)} {Time(moment.TimeOfDay)}";

    /// <summary>"18:00".</summary>
    public static string Time(LocalTime time) => TimePattern.Format(time);

    /// <summary>"45 min", "2 h", "2 h 30 min", "3 days 4 h".</summary>
    public static string Minutes(int minutes)
    {
        var (days, rest) = Math.DivRem(minutes, 1440);
        if (days >= 3)
        {
            var hours = (rest + 30) / 60;
            return hours == 0 ? $"{days} days" : $"{days} days {hours} h";
        }

        return Work(minutes);
    }

    /// <summary>Minutes of work, which are told in hours however many: "45 min", "1 h 30 min", "120 h".</summary>
    public static string Work(int minutes)
    {
        var (whole, left) = Math.DivRem(minutes, 60);
        return (whole, left) switch
        {
            (0, _) => $"{left} min",
            (_, 0) => $"{whole} h",
            _ => $"{whole} h {left} min",
        };
    }

    /// <summary>"1 day", "11 days".</summary>
    public static string Days(int days) => days == 1 ? "1 day" : string.Create(CultureInfo.InvariantCulture, $"{days} days");
}
