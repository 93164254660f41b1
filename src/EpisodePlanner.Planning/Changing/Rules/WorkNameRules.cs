namespace EpisodePlanner.Planning;

/// <summary>A stretch of work named by the log or an accepted start: of a task, one of its shots, or of an episode's tail.</summary>
internal readonly record struct WorkName(Id? Task, Id? Stage, Id? Episode, TailKind? Part)
{
    /// <summary>The shot of the task that is filmed.</summary>
    public Id? Shot { get; init; }
}

/// <summary>Names of work: exactly one of task and episode, each with its own kind of part.</summary>
internal static class WorkNameRules
{
    public static void Check(Inspection inspection, WorkName work, Spot at)
    {
        inspection.RefuseIf(
            work.Task is null == work.Episode is null, at,
            "Work is done on one of two: name either a task or an episode.");
        inspection.RefuseIf(
            work.Stage is not null && work.Task is null,
            at.Member("stage"),
            "A stage needs its task; name the task too.");
        inspection.RefuseIf(
            work.Part is not null && work.Episode is null,
            at.Member("part"),
            "A part needs its episode; name the episode too.");
        inspection.RefuseIf(
            work.Shot is not null && (work.Task is null || work.Stage is not null),
            at.Member("shot"),
            "A shot is filmed in a stretch of its own; name its task too, and no stage.");
        inspection.Leads(at.Member("episode"), Referent.Episode, work.Episode);
        if (!inspection.Leads(at.Member("task"), Referent.Task, work.Task))
        {
            return;
        }

        if (work.Stage is { } stage)
        {
            inspection.LeadsToStage(at.Member("stage"), work.Task!.Value, stage);
        }

        if (work.Shot is { } shot)
        {
            inspection.LeadsToShot(at.Member("shot"), work.Task!.Value, shot);
        }
    }
}
