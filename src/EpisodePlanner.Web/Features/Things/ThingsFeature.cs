using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>The things of a workshop.</summary>
internal static class ThingsFeature
{
    /// <summary>Maps the endpoints of every kind of thing.</summary>
    public static void MapThings(this RouteGroupBuilder workshop)
    {
        new ThingEndpoints<Person, NameQuery>(ThingKinds.People, ThingFilters.OfPerson).Map(workshop);
        new ThingEndpoints<Machine, NameQuery>(ThingKinds.Machines, ThingFilters.OfMachine).Map(workshop);
        new ThingEndpoints<Place, NameQuery>(ThingKinds.Places, ThingFilters.OfPlace).Map(workshop);
        new ThingEndpoints<Series, NameQuery>(ThingKinds.Series, ThingFilters.OfSeries).Map(workshop);
        new ThingEndpoints<WorkTask, StoryQuery>(ThingKinds.Tasks, ThingFilters.OfTask).Map(workshop);
        new ThingEndpoints<Episode, StoryQuery>(ThingKinds.Episodes, ThingFilters.OfEpisode).Map(workshop);
        new ThingEndpoints<SlotRule, SeriesDayQuery>(ThingKinds.SlotRules, ThingFilters.OfSlotRule).Map(workshop);
        new ThingEndpoints<Upload, SeriesDayQuery>(ThingKinds.Uploads, ThingFilters.OfUpload).Map(workshop);
        new ThingEndpoints<LogEntry, LogQuery>(ThingKinds.Log, ThingFilters.OfLogEntry).Map(workshop);
        new ThingEndpoints<ToldDate, SeriesDayQuery>(ThingKinds.ToldDates, ThingFilters.OfToldDate).Map(workshop);
        new ThingEndpoints<TimedLine, DayQuery>(ThingKinds.TimedLines, ThingFilters.OfTimedLine).Map(workshop);
        new ThingEndpoints<Booking, DayQuery>(ThingKinds.Bookings, ThingFilters.OfBooking).Map(workshop);
    }
}
