using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>"A helper on Saturday": one more pair of hands on the day on which the hands of a chain have most to do.</summary>
internal static class HelperForADay
{
    /// <summary>The idea for the busiest person of an episode's chain; null where nobody works for it.</summary>
    public static RemedyIdea? Of(Plan plan, PlannedEpisode episode)
    {
        var chain = new EpisodeChain(plan, episode);
        if (chain.People.FirstOrDefault() is not { } person || Busiest(plan, episode, person.Id) is not { } day)
        {
            return null;
        }

        var helper = new OpenHours { Dated = [new DatedHours { Kind = DatedHoursKind.Extra, On = day.Date, From = day.From, To = day.To }] };
        return new RemedyIdea(
            RemedyKind.Bench,
            $"somebody helps on {Words.Day(day.Date)}, {Words.Time(day.From)} to {Words.Time(day.To)}",
            MoreStations.MoreHands(plan.Request.Workshop, person, "a helper", helper),
            []);
    }

    /// <summary>The day until the episode is ready on which somebody's hands have most to do, and from when to when; of equal ones the first.</summary>
    private static (LocalDate Date, LocalTime From, LocalTime To)? Busiest(Plan plan, PlannedEpisode episode, Id person)
    {
        var days = plan.Stages
            .SelectMany(stage => stage.Parts)
            .Where(part => part.Kind == PartKind.Work && part.Stations.Contains(person) && (episode.Ready is null || part.End <= episode.Ready))
            .Select(part => (Start: part.Start.InZone(plan.Zone).LocalDateTime, End: part.End.InZone(plan.Zone).LocalDateTime))
            .Where(part => part.Start.Date == part.End.Date && part.Start < part.End)
            .GroupBy(part => part.Start.Date)
            .OrderByDescending(day => day.Sum(part => Period.Between(part.Start, part.End, PeriodUnits.Minutes).Minutes))
            .ThenBy(day => day.Key)
            .FirstOrDefault();
        return days is null ? null : (days.Key, days.Min(part => part.Start.TimeOfDay), days.Max(part => part.End.TimeOfDay));
    }
}
