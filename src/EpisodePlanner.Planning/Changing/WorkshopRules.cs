namespace EpisodePlanner.Planning;

/// <summary>What must hold in every workshop, whichever way it came to be.</summary>
public static class WorkshopRules
{
    /// <summary>
    /// Every rule that the workshop breaks; empty where it is sound. First the limits that single members declare, then
    /// the rules that span members, each in the order of the file. Where something that must be given is missing, only
    /// the limits are told. The effort grows with the size of the workshop.
    /// </summary>
    public static ValueList<Reason> Check(Workshop workshop)
    {
        var reasons = new ReasonList();
        Check(workshop, null, reasons);
        return reasons.ToValueList();
    }

    /// <summary>The same after a change: a reference to what the change removed is told as such.</summary>
    internal static void Check(Workshop workshop, Workshop? before, ReasonList reasons)
    {
        if (!Limits.Check(workshop, reasons))
        {
            return;
        }

        var inspection = new Inspection(workshop, before, reasons);
        WholeRules.CheckZone(inspection);
        WholeRules.CheckSettings(inspection);
        StationRules.Check(inspection);
        SeriesRules.Check(inspection);
        TaskRules.Check(inspection);
        EpisodeRules.Check(inspection);
        PublishingRules.CheckSlots(inspection);
        PublishingRules.CheckUploads(inspection);
        LogRules.Check(inspection);
        DatedRules.CheckToldDates(inspection);
        DatedRules.CheckTimedLines(inspection);
        DatedRules.CheckBookings(inspection);
        WholeRules.CheckAccepted(inspection);
    }
}
