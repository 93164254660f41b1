namespace EpisodePlanner.Planning;

/// <summary>Slots that come some day, and uploads of what there is.</summary>
internal static class PublishingRules
{
    public static void CheckSlots(Inspection inspection)
    {
        foreach (var slot in inspection.Workshop.SlotRules)
        {
            var at = ThingKinds.SlotRules.At(slot.Id);
            CheckRecurrence(inspection, slot, at.Member("rule"));
            foreach (var (series, spot) in slot.Series.At(at.Member("series")))
            {
                inspection.Leads(spot, Referent.Series, series);
            }
        }
    }

    public static void CheckUploads(Inspection inspection)
    {
        foreach (var upload in inspection.Workshop.Uploads)
        {
            var at = ThingKinds.Uploads.At(upload.Id);
            inspection.Leads(at.Member("series"), Referent.Series, upload.Series);
            if (inspection.Leads(at.Member("episode"), Referent.Episode, upload.Episode))
            {
                var told = inspection.Workshop.Episodes.Find(upload.Episode!.Value)!.Series;
                inspection.RefuseIf(
                    told != upload.Series,
                    at.Member("series"),
                    $"The episode '{upload.Episode}' tells series '{told}'; its upload must be of that series.");
            }
        }
    }

    private static void CheckRecurrence(Inspection inspection, SlotRule slot, Spot at)
    {
        if (SlotRecurrence.Read(slot.Rule, out var problem) is not { } recurrence)
        {
            inspection.Refuse(
                at,
                $"'{slot.Rule}' is not a recurrence rule: {problem}. Write one like FREQ=WEEKLY;BYDAY=FR (RFC 5545).");
            return;
        }

        inspection.RefuseIf(
            !recurrence.EverOccurs(slot.From, slot.Except, Limits.Latest),
            at,
            $"'{slot.Rule}' never comes from {LimitWords.Day(slot.From)} on; name days that exist and are not all left out.");
    }
}
