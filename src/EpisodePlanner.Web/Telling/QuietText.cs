using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What else there is to say about silences: after what nothing is planned, who rests, who keeps the promise.</summary>
internal static class QuietText
{
    public static void Write(ISheet page, Plan plan, PlanNames names)
    {
        var resting = plan.Series.Where(o => o.State == SeriesState.Resting).ToList();
        var active = plan.Series.Where(o => o.State == SeriesState.Active).ToList();
        Say(page, "Within the promise", active.Where(o => o.Alarms.Count == 0 && o.DueBy is not null)
            .Select(o => $"{o.Name} (due by {names.ShortDay(o.DueBy!.Value)})"));
        Say(page, "No upload yet", active.Where(o => o.LastUpload is null).Select(o => o.Name));
        Say(page, "Nothing is planned after", active.Where(o => o.LastPlanned is not null)
            .OrderBy(o => o.LastPlanned).Select(o => $"{names.ShortDay(o.LastPlanned!.Value)} for {o.Name}"));
        Say(page, "Nothing is planned at all for", active.Where(o => o.LastPlanned is null).Select(o => o.Name));
        Say(page, "Resting", resting.Select(o => Rest(o, plan, names)));
    }

    private static string Rest(Outlook outlook, Plan plan, PlanNames names) =>
        plan.Request.Workshop.Series.Find(outlook.Series)?.RestingUntil is { } until
            ? $"{outlook.Name}, until {names.ShortDay(until)}"
            : outlook.Name;

    private static void Say(ISheet page, string what, IEnumerable<string> which)
    {
        var said = string.Join("; ", which);
        if (said.Length > 0)
        {
            page.Item($"{what}: {said}.");
        }
    }
}
