using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Reads single answers out of a plan; moments as the clock of its zone shows them: "2027-03-19T18:00".</summary>
internal static class PlanReading
{
    private static readonly LocalDateTimePattern Minute = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    public static string? Local(this Plan plan, Instant? moment) =>
        moment is { } at ? Minute.Format(at.InZone(plan.Zone).LocalDateTime) : null;

    public static PlannedStage Stage(this Plan plan, string task, string stage = "1") =>
        plan.Stages.Single(s => s.Key == StageKey.OfTask(new Id(task), new Id(stage)));

    public static PlannedStage Tail(this Plan plan, string episode, int part = 0) =>
        plan.Stages.Single(s => s.Key == StageKey.OfTail(new Id(episode), part));

    public static PlannedEpisode Episode(this Plan plan, string id) => plan.Episodes.Single(e => e.Id == new Id(id));

    public static Outlook Outlook(this Plan plan, string series) => plan.Series.Single(o => o.Series == new Id(series));

    public static string? Start(this Plan plan, string task, string stage = "1") => plan.Local(plan.Stage(task, stage).Start);

    public static string? Finish(this Plan plan, string task, string stage = "1") => plan.Local(plan.Stage(task, stage).Finish);

    public static string? Ready(this Plan plan, string episode) => plan.Local(plan.Episode(episode).Ready);

    public static string? Publish(this Plan plan, string episode) => plan.Local(plan.Episode(episode).Publish);

    /// <summary>The planned public days of a series, in order.</summary>
    public static IEnumerable<LocalDate> Days(this Plan plan, string series) =>
        plan.Episodes.Where(e => e.Series == new Id(series) && e.Date is not null).Select(e => e.Date!.Value).Order();
}
