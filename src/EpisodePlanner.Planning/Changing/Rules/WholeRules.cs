using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What the workshop says once: its zone, its settings, the accepted plan.</summary>
internal static class WholeRules
{
    public static void CheckZone(Inspection inspection)
    {
        var zone = inspection.Workshop.Zone;
        var known = DateTimeZoneProviders.Tzdb.Ids;
        if (!known.Contains(zone))
        {
            var nearest = inspection.Nearest.To(zone, known) ?? "Europe/Dublin";
            var says = $"There is no time zone '{zone}' in the IANA list; write a name from it, such as '{nearest}'.";
            inspection.Refuse(Spot.Root.Member("zone"), says);
        }
    }

    public static void CheckSettings(Inspection inspection)
    {
        var at = Spot.Root.Member("settings", "the settings");
        EstimateRules.Check(inspection, inspection.Workshop.Settings.Tail, at.Member("tail"));
        inspection.Leads(at.Member("desk"), Referent.Place, inspection.Workshop.Settings.Desk);
    }

    public static void CheckAccepted(Inspection inspection)
    {
        var at = Spot.Root.Member("accepted", "the accepted plan").Member("starts");
        foreach (var (start, spot) in (inspection.Workshop.Accepted?.Starts ?? []).At(at))
        {
            WorkNameRules.Check(inspection, new WorkName(start.Task, start.Stage, start.Episode, start.Part) { Shot = start.Shot }, spot);
        }
    }
}
