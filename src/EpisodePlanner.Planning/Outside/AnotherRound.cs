using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>A wait for somebody's word that may be no: what another round of it would move.</summary>
/// <param name="Stage">The wait.</param>
/// <param name="Chance">The chance that another round is needed, above 0.</param>
/// <param name="BusinessDays">Business days of a round; null where it is counted in hours.</param>
/// <param name="Moves">The uploads that move with one round more; null where that was not tried.</param>
public sealed record AnotherRound(PlannedStage Stage, decimal Chance, int? BusinessDays, ValueList<UploadMove>? Moves)
{
    internal static ValueList<AnotherRound> Of(Plan plan, bool trials, CancellationToken stop)
    {
        var found = new List<AnotherRound>();
        foreach (var planned in plan.Stages.Where(stage => stage.Kind == StageKind.Wait && stage.Key.IsTask))
        {
            var task = plan.Request.Workshop.Tasks.Find(planned.Key.Task)!;
            if (task.Stages.FirstOrDefault(stage => stage.Id == planned.Key.Stage) is { FailureChance: > 0 } wait)
            {
                var then = trials && !stop.IsCancellationRequested ? Replanning.After(plan, Twice(task, wait), stop) : null;
                found.Add(new AnotherRound(
                    planned, wait.FailureChance, wait.BusinessDays, then is null ? null : UploadMoves.Between(plan, then)));
            }
        }

        return found.ToValueList();
    }

    /// <summary>The same wait, twice as long.</summary>
    private static TaskChange Twice(WorkTask task, Stage wait) => new(task.Id, task with
    {
        Stages = task.Stages.Select(stage => stage.Id != wait.Id ? stage : stage with
        {
            BusinessDays = stage.BusinessDays * 2,
            Hours = stage.Hours * 2,
            LowHours = stage.LowHours * 2,
            HighHours = stage.HighHours * 2,
        }).ToValueList(),
    });
}
