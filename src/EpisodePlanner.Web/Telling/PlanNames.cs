using System.Globalization;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>How things and moments of a plan are called.</summary>
internal sealed class PlanNames(Plan plan)
{
    private const int DaysWithoutYear = 300;
    private readonly Workshop workshop = plan.Request.Workshop;

    public LocalDate Today => plan.Now.Date;

    /// <summary>"“First ride” (Slipway Trolley)"; an assumed episode names its series itself.</summary>
    public string Full(PlannedEpisode episode) =>
        episode.Assumed ? episode.Title : $"{Quote(episode.Title)} ({Series(episode.Series)})";

    public static string Title(PlannedEpisode episode) => episode.Assumed ? episode.Title : Quote(episode.Title);

    public static string Quote(string name) => $"\u201c{name}\u201d";

    public string Series(Id id) => workshop.Series.Find(id)?.Name ?? "";

    public string Moment(Instant moment)
    {
        var local = moment.InZone(plan.Zone);
        return $"{Words.ShortDay(local.Date)}{Year(local.Date)} {Words.Time(local.TimeOfDay)}";
    }

    /// <summary>"19:10 to 22:00", with the second day where it is another.</summary>
    public string Span(Instant from, Instant to)
    {
        var sameDay = from.InZone(plan.Zone).Date == to.InZone(plan.Zone).Date;
        return $"{Moment(from)} to {(sameDay ? Words.Time(to.InZone(plan.Zone).TimeOfDay) : Moment(to))}";
    }

    public string Day(LocalDate day) => Words.Day(day) + Year(day);

    public string ShortDay(LocalDate day) => Words.ShortDay(day) + Year(day);

    public LocalDate DateOf(Instant moment) => moment.InZone(plan.Zone).Date;

    /// <summary>Names of stations in a row: people last.</summary>
    public string Stations(IEnumerable<Id> ids) => string.Join(", ", ids.OrderBy(IsPerson).Select(Station));

    public bool IsPerson(Id id) => !workshop.Machines.Contains(id) && !workshop.Places.Contains(id);

    private string Station(Id id) =>
        workshop.Machines.Find(id)?.Name ?? workshop.Places.Find(id)?.Name ?? workshop.People.Find(id)?.Name ?? Defaults.Maker.Name;

    /// <summary>A year is said where a day alone could mean two.</summary>
    private string Year(LocalDate day) => Math.Abs(Period.DaysBetween(Today, day)) > DaysWithoutYear
        ? day.Year.ToString(" 0", CultureInfo.InvariantCulture)
        : "";
}
