using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A series that rests openly until a day, or is told to its end: what it frees and what it moves, found by planning again.</summary>
public sealed record SeriesPause
{
    /// <summary>The series as it is now.</summary>
    public required Series Series { get; init; }

    /// <summary>The day on which it comes back; null where it is finished.</summary>
    public required LocalDate? Until { get; init; }

    /// <summary>It as a change.</summary>
    public required Supposition Supposition { get; init; }

    /// <summary>The plan, and the plan then.</summary>
    public required PlanDifference Difference { get; init; }

    /// <summary>Minutes of hands-on work that the series takes before that day by the plan, and then no more; all of it where it is finished.</summary>
    public required int FreedMinutes { get; init; }

    /// <summary>The milestones that would not be shown any more; none where it only rests.</summary>
    public required ValueList<Milestone> Untold { get; init; }

    /// <summary>Plans a pause, or an end.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series.</param>
    /// <param name="until">The day on which it comes back; null to finish it.</param>
    /// <param name="stop">Ends the search for something better.</param>
    /// <returns>The pause; null where there is no such series or it is finished, or where the change is refused.</returns>
    public static SeriesPause? Of(Plan plan, Id series, LocalDate? until, CancellationToken stop = default)
    {
        var workshop = plan.Request.Workshop;
        var supposition = until is { } day ? Suppositions.Rests(workshop, series, day) : Suppositions.Finishes(workshop, series);
        return supposition is null || Replanning.After(plan, supposition.Change, stop) is not { } then
            ? null
            : new SeriesPause
            {
                Series = workshop.Series.Find(series)!,
                Until = until,
                Supposition = supposition,
                Difference = new PlanDifference(plan, then),
                FreedMinutes = Minutes(plan, series, until) - Minutes(then, series, until),
                Untold = until is null ? Untelling(plan, series) : [],
            };
    }

    private static int Minutes(Plan plan, Id series, LocalDate? until)
    {
        var work = plan.Stages.Where(stage => stage.Series == series && stage.Kind == StageKind.Attended);
        if (until is not { } day)
        {
            return work.Sum(stage => stage.Minutes);
        }

        var end = plan.Zone.AtStartOfDay(day).ToInstant();
        return work.SelectMany(stage => stage.Parts)
            .Where(part => part.Kind == PartKind.Work && part.Start < end)
            .Sum(part => (int)(Instant.Min(part.End, end) - part.Start).TotalMinutes);
    }

    private static ValueList<Milestone> Untelling(Plan plan, Id series)
    {
        var open = plan.Episodes.Where(episode => episode.Series == series).SelectMany(episode => episode.Milestones).ToHashSet();
        return plan.Request.Workshop.Series.Find(series)!.Milestones.Where(milestone => open.Contains(milestone.Id)).ToValueList();
    }
}
