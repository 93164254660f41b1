namespace EpisodePlanner.Planning;

/// <summary>Tasks: somewhere to lead to, at least one stage, stages and shots with ids of their own.</summary>
internal static class TaskRules
{
    public static void Check(Inspection inspection)
    {
        foreach (var task in inspection.Workshop.Tasks)
        {
            var at = ThingKinds.Tasks.At(task.Id);
            CheckAim(inspection, task, at);
            StageRules.Check(inspection, task.Stages, at.Member("stages"));
            LinkRules.Check(inspection, task.Links, at.Member("links"));
            CheckShots(inspection, task.Shots, at.Member("shots"));
        }

        LinkCircles.Check(inspection);
    }

    private static void CheckAim(Inspection inspection, WorkTask task, Spot at)
    {
        var leadsToMilestone = inspection.Leads(at.Member("milestone"), Referent.Milestone, task.Milestone);
        var belongs = inspection.Leads(at.Member("series"), Referent.Series, task.Series);
        if (leadsToMilestone && belongs)
        {
            var home = inspection.Register.StoryPlace(task.Milestone!.Value)!.Value.Series;
            inspection.RefuseIf(
                home != task.Series,
                at.Member("series"),
                $"The milestone '{task.Milestone}' is of series '{home}', not '{task.Series}'; name the milestone alone.");
        }
    }

    private static void CheckShots(Inspection inspection, ValueList<Shot> shots, Spot at)
    {
        OwnIds.Check(inspection, shots.Select(s => s.Id), "shot", at);
        foreach (var (shot, spot) in shots.At(at))
        {
            inspection.Leads(spot.Member("lostBy"), Referent.Task, shot.LostBy);
        }
    }
}
