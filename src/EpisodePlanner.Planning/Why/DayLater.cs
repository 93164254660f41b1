using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A task of the next two weeks that was put off by a day and planned again.</summary>
/// <param name="Task">The task.</param>
/// <param name="Name">The task in words.</param>
/// <param name="Series">The series it serves; empty for work on the workshop itself.</param>
/// <param name="Starts">When it starts by plan.</param>
/// <param name="Later">The uploads that are then later; none where it can wait.</param>
public sealed record DayLater(Id Task, string Name, Id Series, Instant Starts, ValueList<UploadMove> Later)
{
    /// <summary>Whether it can start a day later without making any upload later.</summary>
    public bool CanWait => Later.Count == 0;
}

/// <summary>Finds what can wait a day.</summary>
internal static class WaitingADay
{
    private const int DaysAhead = 14;
    private const int MostTasks = 30;

    /// <summary>The first stages of tasks that start within two weeks and are not begun, by start.</summary>
    public static IReadOnlyList<PlannedStage> Candidates(Plan plan)
    {
        var until = plan.Request.PlannedAt + Duration.FromDays(DaysAhead);
        return
        [
            .. plan.Stages
                .Where(stage => stage.Key.IsTask && stage.Start is not null)
                .GroupBy(stage => stage.Key.Task)
                .Select(stages => stages.MinBy(stage => stage.Start)!)
                .Where(first => !first.Begun && first.Start < until)
                .OrderBy(first => first.Start)
                .ThenBy(first => first.Name, StringComparer.Ordinal)
                .Take(MostTasks),
        ];
    }

    public static ValueList<DayLater> Try(
        Plan plan, IReadOnlyList<PlannedStage> candidates, SharedProgress progress, CancellationToken stop)
    {
        var tried = new List<DayLater>();
        foreach (var stage in candidates)
        {
            var putOff = PuttingOff.ByADay(plan, stage, stop).Then;
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (putOff is { } after)
            {
                tried.Add(Of(plan, stage, after));
            }

            progress.Step();
        }

        return tried.ToValueList();
    }

    private static DayLater Of(Plan plan, PlannedStage stage, Plan after) => new(
        stage.Key.Task,
        plan.Request.Workshop.Tasks.Find(stage.Key.Task)!.Name,
        stage.Series,
        stage.Start!.Value,
        UploadMoves.Between(plan, after).Where(move => move.IsLater).ToValueList());
}
