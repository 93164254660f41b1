namespace EpisodePlanner.Planning;

/// <summary>The log: entries on work that exists, nothing begun twice before it ends.</summary>
internal static class LogRules
{
    public static void Check(Inspection inspection)
    {
        foreach (var entry in inspection.Workshop.Log)
        {
            var at = ThingKinds.Log.At(entry.Id);
            WorkNameRules.Check(inspection, new WorkName(entry.Task, entry.Stage, entry.Episode, entry.Part), at);
            inspection.Leads(at.Member("station"), Referent.Station, entry.Station);
        }

        foreach (var work in inspection.Workshop.Log.GroupBy(entry => (entry.Task, entry.Episode)))
        {
            OpenWork.Check(inspection, work);
        }
    }
}
