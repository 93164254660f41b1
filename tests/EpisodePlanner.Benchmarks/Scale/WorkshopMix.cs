namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>
/// What a generated workshop is made of. All of it is per task, so that a larger workshop is a longer one, not a denser
/// one: hours, stations and series stay, and the work reaches further into the years.
/// </summary>
internal static class WorkshopMix
{
    public const int Series = 10;
    public const int TasksPerMilestone = 5;
    public const int MilestonesPerEpisode = 2;

    /// <summary>In a hundred tasks: hands, then hands again.</summary>
    public const int AttendedTwice = 60;

    /// <summary>In a hundred tasks: a machine run, then hands. The rest is hands, then a wait.</summary>
    public const int RunThenAttended = 25;

    /// <summary>In a hundred links: to a task of the same series; the rest to another.</summary>
    public const int SameSeries = 80;

    /// <summary>How far back in its series a link reaches at most, tasks.</summary>
    public const int LinkReach = 6;

    /// <summary>In a hundred links: "after"; the rest are together-start.</summary>
    public const int After = 90;

    /// <summary>In a hundred links: with a lag, half of them in elapsed and half in working minutes.</summary>
    public const int Lagged = 10;

    public const decimal TailHours = 3;

    public static string Says =>
        $"""
        Workshop: {Series} series, 2 people (evenings and weekends), 4 machines (2 printers that may run alone, laser, mill),
        2 benches with set-up and tidying, a desk; an upload slot every evening; promise 28 days.
        Tasks: 2 stages; of 100 tasks {AttendedTwice} hands + hands, {RunThenAttended} run + hands, {100 - AttendedTwice - RunThenAttended} hands + wait; hands 20 to 60 min, runs 1 to 9 h,
        waits 6 to 48 h; 1 of 3 stretches of hands at a bench, 1 of 6 at a machine.
        Links: 1 to 3 a task, 2 on average, {SameSeries} of 100 to one of the last {LinkReach} tasks of the series, else to one as near of
        another; {After} of 100 "after", else together-start; {Lagged} of 100 with a lag, half of these in working minutes.
        Story: a milestone every {TasksPerMilestone} tasks, an episode every {MilestonesPerEpisode} milestones with a tail of {TailHours} h. Nothing is logged yet.
        """;
}
