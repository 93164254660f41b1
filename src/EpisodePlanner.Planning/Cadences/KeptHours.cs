using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Hours of hands-on work a week, as they were kept.</summary>
/// <param name="HoursAWeek">The hours.</param>
/// <param name="OpenHoursAWeek">Hours a week that the people are free by their calendars, over the next four weeks.</param>
/// <param name="Weeks">Over how many weeks of the log, weeks without an entry included; 0 where the free hours are taken instead.</param>
public sealed record KeptHours(decimal HoursAWeek, decimal OpenHoursAWeek, int Weeks)
{
    /// <summary>The log is read so many weeks back.</summary>
    private const int MostWeeks = 12;

    /// <summary>With fewer weeks of log, free hours are taken for kept ones.</summary>
    private const int LeastWeeks = 2;
    private const int WeeksAhead = 4;
    private const int Day = 1440;

    /// <summary>Whether there is too little history, so that every free hour is taken as kept.</summary>
    public bool Assumed => Weeks == 0;

    /// <summary>The share of free hours that is kept, or null where nobody is free.</summary>
    public decimal? Share => OpenHoursAWeek == 0 ? null : HoursAWeek / OpenHoursAWeek;

    /// <summary>What the log up to the moment of planning says; hours of machines and waits are not hands'.</summary>
    public static KeptHours Of(Plan plan)
    {
        var open = OpenHours(plan);
        var now = plan.Request.PlannedAt;
        var entries = plan.Request.Workshop.Log.Where(entry => entry.At <= now && entry.Minutes > 0).ToList();
        var weeks = entries.Count == 0 ? 0 : Math.Min(MostWeeks, (int)((now - entries.Min(entry => entry.At)).TotalDays / 7));
        if (weeks < LeastWeeks)
        {
            return new KeptHours(open, open, 0);
        }

        var minutes = entries.Where(entry => entry.At > now - Duration.FromDays(7 * weeks) && IsByHand(plan.Request.Workshop, entry)).Sum(entry => (long)entry.Minutes);
        return new KeptHours(minutes / 60m / weeks, open, weeks);
    }

    private static decimal OpenHours(Plan plan)
    {
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, WeeksAhead * 7 * Day);
        var stations = new StationTable(plan.Request.Workshop, axis).Stations;
        return stations.Where(station => station.Kind == StationKind.Person).Sum(person => (long)person.Hours.TotalWork) / 60m / WeeksAhead;
    }

    private static bool IsByHand(Workshop workshop, LogEntry entry)
    {
        var task = entry.Task is { } id ? workshop.Tasks.Find(id) : null;
        var stage = task?.Stages.FirstOrDefault(stage => stage.Id == entry.Stage);
        return stage is { } known ? known.Kind == StageKind.Attended : task is null || task.Stages.Any(s => s.Kind == StageKind.Attended);
    }
}
