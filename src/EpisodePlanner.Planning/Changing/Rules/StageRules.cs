using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Stages: each says only what its kind can mean.</summary>
internal static class StageRules
{
    public static void Check(Inspection inspection, ValueList<Stage> stages, Spot at)
    {
        inspection.RefuseIf(stages.Count == 0, at, "A task needs at least one stage; give its hours.");
        OwnIds.Check(inspection, stages.Select(s => s.Id), "stage", at);
        foreach (var (stage, spot) in stages.At(at))
        {
            EstimateRules.Check(inspection, stage, spot);
            CheckRunMembers(inspection, stage, spot);
            inspection.RefuseIf(
                stage.BusinessDays is not null && stage.Kind is not StageKind.Wait,
                spot.Member("businessDays"),
                "Only a wait counts business days; make this stage a wait or give hours alone.");
            NeedRules.Check(inspection, stage, spot.Member("needs"));
        }
    }

    private static void CheckRunMembers(Inspection inspection, Stage stage, Spot at)
    {
        if (stage.Kind is StageKind.Run)
        {
            return;
        }

        inspection.RefuseIf(
            stage.LoadMinutes > 0,
            at.Member("loadMinutes"),
            "Only a run is loaded; remove loadMinutes.");
        inspection.RefuseIf(
            stage.UnloadMinutes > 0,
            at.Member("unloadMinutes"),
            "Only a run is unloaded; remove unloadMinutes.");
        inspection.RefuseIf(stage.LookAt.Count > 0, at.Member("lookAt"), "Only a run is looked at; remove lookAt.");
    }
}
