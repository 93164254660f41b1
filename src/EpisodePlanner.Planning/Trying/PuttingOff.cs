using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Puts work off by a day and plans again.</summary>
internal static class PuttingOff
{
    /// <summary>The day after the one on which a stage starts.</summary>
    public static LocalDate DayAfter(Plan plan, PlannedStage stage) => stage.Start!.Value.InZone(plan.Zone).Date.PlusDays(1);

    /// <summary>That day, and the plan in which its task may not begin before it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stage">A stage of a task, with a start.</param>
    /// <param name="stop">Ends the search for something better.</param>
    /// <returns>The day, and the plan then; the plan is null where the change is refused.</returns>
    public static (LocalDate To, Plan? Then) ByADay(Plan plan, PlannedStage stage, CancellationToken stop = default)
    {
        var task = plan.Request.Workshop.Tasks.Find(stage.Key.Task)!;
        var day = DayAfter(plan, stage);
        return (day, Replanning.After(plan, new TaskChange(task.Id, task with { NotBefore = day }), stop));
    }
}
