namespace EpisodePlanner.Planning;

/// <summary>Links: a task to wait for, and lags that can be kept.</summary>
internal static class LinkRules
{
    public static void Check(Inspection inspection, ValueList<TaskLink> links, Spot at)
    {
        foreach (var (link, spot) in links.At(at))
        {
            inspection.Leads(spot.Member("task"), Referent.Task, link.Task);
            inspection.Leads(spot.Member("lagStation"), Referent.Station, link.LagStation);
            CheckLag(inspection, link, spot);
        }
    }

    private static void CheckLag(Inspection inspection, TaskLink link, Spot at)
    {
        var isWorking = link.LagClock is LagClock.Working;
        inspection.RefuseIf(
            isWorking && link.LagMinutes < 0,
            at.Member("lagMinutes"),
            "A lag in working minutes can't be negative; make it 0 or more, or count elapsed minutes.");
        inspection.RefuseIf(
            !isWorking && link.LagStation is not null,
            at.Member("lagStation"),
            "Only a lag in working minutes counts at a station; remove lagStation or count working minutes.");
        inspection.RefuseIf(
            !isWorking && link.AtMostMinutes < link.LagMinutes,
            at.Member("atMostMinutes"),
            $"At most {link.AtMostMinutes} minutes is less than the lag of {link.LagMinutes}; make it at least the lag.");
    }
}
