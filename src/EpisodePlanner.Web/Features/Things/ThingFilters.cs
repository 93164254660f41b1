using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>Says whether a thing of a workshop is among those that a query asks for.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
/// <typeparam name="TQuery">The query.</typeparam>
internal delegate bool ThingFilter<in T, in TQuery>(T thing, TQuery query, Workshop workshop);

/// <summary>What queries mean for each kind of thing.</summary>
internal static class ThingFilters
{
    public static bool OfPerson(Person thing, NameQuery query, Workshop workshop) => Names(query.Name, thing.Name);

    public static bool OfMachine(Machine thing, NameQuery query, Workshop workshop) => Names(query.Name, thing.Name);

    public static bool OfPlace(Place thing, NameQuery query, Workshop workshop) => Names(query.Name, thing.Name);

    public static bool OfSeries(Series thing, NameQuery query, Workshop workshop) => Names(query.Name, thing.Name);

    public static bool OfTask(WorkTask thing, StoryQuery query, Workshop workshop) =>
        Names(query.Name, thing.Name) && Is(query.Series, SeriesOf(thing, workshop));

    public static bool OfEpisode(Episode thing, StoryQuery query, Workshop workshop) =>
        Names(query.Name, thing.Title) && Is(query.Series, thing.Series);

    /// <summary>A rule for all series is one for each of them; it is on every day from its first.</summary>
    public static bool OfSlotRule(SlotRule thing, SeriesDayQuery query, Workshop workshop) =>
        (query.Series is not { } series || thing.Series.Count == 0 || thing.Series.Contains(series))
        && Within(query.From, query.Until, thing.From, LocalDate.MaxIsoValue);

    public static bool OfUpload(Upload thing, SeriesDayQuery query, Workshop workshop) =>
        Is(query.Series, thing.Series) && Within(query.From, query.Until, thing.Date, thing.Date);

    public static bool OfLogEntry(LogEntry thing, LogQuery query, Workshop workshop)
    {
        var day = thing.At.InZone(DateTimeZoneProviders.Tzdb[workshop.Zone]).Date;
        return Is(query.Task, thing.Task) && Is(query.Series, SeriesOf(thing, workshop))
            && Within(query.From, query.Until, day, day);
    }

    public static bool OfToldDate(ToldDate thing, SeriesDayQuery query, Workshop workshop) =>
        Is(query.Series, workshop.Episodes.Find(thing.Episode)?.Series)
        && Within(query.From, query.Until, thing.Date, thing.Date);

    public static bool OfTimedLine(TimedLine thing, DayQuery query, Workshop workshop) =>
        Within(query.From, query.Until, thing.From, thing.Until);

    public static bool OfBooking(Booking thing, DayQuery query, Workshop workshop) =>
        Within(query.From, query.Until, thing.From.Date, thing.To.Date);

    private static Id? SeriesOf(LogEntry entry, Workshop workshop) =>
        entry.Episode is { } episode ? workshop.Episodes.Find(episode)?.Series
        : entry.Task is { } task && workshop.Tasks.Find(task) is { } found ? SeriesOf(found, workshop)
        : null;

    private static Id? SeriesOf(WorkTask task, Workshop workshop) => task.Milestone is { } milestone
        ? workshop.Series.FirstOrDefault(series => series.Milestones.Any(state => state.Id == milestone))?.Id
        : task.Series;

    private static bool Names(string? part, string name) =>
        part is null || name.Contains(part, StringComparison.OrdinalIgnoreCase);

    private static bool Is(Id? wanted, Id? id) => wanted is null || wanted == id;

    private static bool Within(LocalDate? from, LocalDate? until, LocalDate first, LocalDate last) =>
        !(last < from) && !(first > until);
}
