using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Work that is needed by a date for a reason outside.</summary>
/// <param name="Task">The task.</param>
/// <param name="By">The day by whose end it is needed.</param>
/// <param name="Done">The day on which the plan finishes it; null for never.</param>
public sealed record NeededDate(WorkTask Task, LocalDate By, LocalDate? Done)
{
    /// <summary>Days to spare, negative where it is late; null where it is never done.</summary>
    public int? Margin => Done is { } done ? Period.DaysBetween(done, By) : null;

    internal static ValueList<NeededDate> Of(Plan plan)
    {
        var stages = plan.Stages.Where(stage => stage.Key.IsTask).ToLookup(stage => stage.Key.Task);
        return plan.Request.Workshop.Tasks
            .Where(task => task.NeededBy is not null && stages[task.Id].Any())
            .Select(task => new NeededDate(task, task.NeededBy!.Value, DoneOn(plan, stages[task.Id])))
            .OrderBy(needed => needed.By)
            .ThenBy(needed => needed.Task.Id)
            .ToValueList();
    }

    private static LocalDate? DoneOn(Plan plan, IEnumerable<PlannedStage> stages)
    {
        Instant? last = Instant.MinValue;
        foreach (var stage in stages)
        {
            last = last is null || stage.Finish is null ? null : Instant.Max(last.Value, stage.Finish.Value);
        }

        return last?.InZone(plan.Zone).Date;
    }
}
