namespace EpisodePlanner.Planning;

/// <summary>Turns a plan into what a maker accepts by saying yes to it.</summary>
public static class Acceptance
{
    /// <summary>
    /// The starts of everything that has a date and is not begun, in order. Work on an episode that nobody has cut has no
    /// name that outlives the plan, and is left out.
    /// </summary>
    public static AcceptedPlan Of(Plan plan) => new()
    {
        At = plan.Request.PlannedAt,
        Starts = plan.Stages
            .Where(stage => stage is { Begun: false, Start: not null })
            .OrderBy(stage => stage.Start)
            .Select(stage => Start(plan.Request.Workshop, stage))
            .OfType<AcceptedStart>()
            .ToValueList(),
    };

    private static AcceptedStart? Start(Workshop workshop, PlannedStage stage)
    {
        var start = stage.Start!.Value;
        if (stage.Key.IsShot)
        {
            return new AcceptedStart { Task = stage.Key.Task, Shot = stage.Key.Shot, Start = start };
        }

        if (!stage.Key.IsTail)
        {
            return new AcceptedStart { Task = stage.Key.Task, Stage = stage.Key.Stage, Start = start };
        }

        return workshop.Episodes.Find(stage.Key.Episode) is { } episode
            ? new AcceptedStart { Episode = episode.Id, Part = Tails.Of(workshop, episode)[stage.Key.Part].Kind, Start = start }
            : null;
    }
}
