using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// Says whether a named cause really holds a stage: with the cause and its co-blockers relaxed and all other stages in
/// their places (the waits glued to the stage move with it), the stage must be able to start earlier in its mode.
/// </summary>
public static class CauseChecker
{
    /// <summary>Why a cause does not hold, in a plain sentence; null where it does.</summary>
    public static string? Check(BenchSchedule schedule, int stage, StartCause cause)
    {
        var name = schedule.Problem.Stages[stage].Name;
        if (!schedule.IsPlaced(stage))
            return $"'{name}' is not placed and its start has no cause.";

        var blockers = cause.CoBlockers.Prepend(cause.Cause).ToArray();
        foreach (var blocker in blockers)
        {
            if (BlockerRules.Check(schedule.Problem, stage, blocker) is { } fault)
                return $"'{name}' names a wrong cause: {fault}.";
        }

        return cause.Cause.Kind switch
        {
            CauseKind.Now => schedule.Start(stage) == 0 ? null : $"'{name}' starts at {schedule.Start(stage)}, not now.",
            CauseKind.Begun => schedule.Problem.Stages[stage].Begun ? null : $"'{name}' was not going on.",
            _ => CheckHeld(schedule, stage, blockers),
        };
    }

    /// <summary>Whether a placed stage could start earlier in its mode although nothing is relaxed.</summary>
    public static bool CouldStartEarlier(BenchSchedule schedule, int stage) =>
        EarlierStart.Find(schedule, stage, Relaxation.None) is not null;

    private static string? CheckHeld(BenchSchedule schedule, int stage, Blocker[] blockers)
    {
        if (BlockerRules.IsGlue(schedule.Problem, stage, blockers[0]))
            return null;

        if (EarlierStart.Find(schedule, stage, BlockerRules.Relax(blockers)) is not null)
            return null;

        var name = schedule.Problem.Stages[stage].Name;
        var kinds = string.Join(" and ", blockers.Select(b => b.Kind));
        return $"'{name}' cannot start before {schedule.Start(stage)} even with {kinds} relaxed.";
    }
}
