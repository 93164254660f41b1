using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The last slot within a series' promise, and what there is time for before it.</summary>
/// <param name="Series">The series.</param>
/// <param name="DueBy">The last day within the promise.</param>
/// <param name="Slot">The last slot on or before that day that has not passed; null for none.</param>
/// <param name="OpenMinutes">Minutes with somebody present from planning until an episode must be ready for that slot.</param>
/// <param name="TailMinutes">Minutes of an episode's tail.</param>
public sealed record LastSlot(Id Series, LocalDate DueBy, SlotWindow? Slot, int OpenMinutes, int TailMinutes)
{
    /// <summary>The minutes that must be found so that an episode of its tail alone holds the promise; 0 where there are enough.</summary>
    public int MinutesToFind => Math.Max(0, TailMinutes - OpenMinutes);

    /// <summary>The last slot of a series; null where it has no promise in days, rests, or nothing is out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series.</param>
    public static LastSlot? Of(Plan plan, Id series)
    {
        if (plan.Series.FirstOrDefault(outlook => outlook.Series == series) is not { DueBy: { } due })
        {
            return null;
        }

        var workshop = plan.Request.Workshop;
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, (int)(plan.Horizon - plan.Request.PlannedAt).TotalMinutes);
        var slot = SlotWindows.Of(PlanDraft.SlotRulesOf(workshop), workshop.Settings.DaysToAvoid, axis)
            .LastOrDefault(slot => slot.Admits(series) && slot.End > 0 && slot.LocalOpening.Date <= due);
        var lead = (workshop.Settings.SafetyLeadHours ?? 0) + (workshop.Settings.EarlyViewHours ?? 0);
        var ready = slot is null ? 0 : Math.Max(0, slot.End - (int)Math.Ceiling(lead * 60));
        return new LastSlot(
            series,
            due,
            slot,
            new StationTable(workshop, axis).Presence.WorkBetween(0, ready),
            (int)Math.Ceiling(Tails.Of(workshop, null).Sum(part => part.Hours) * 60));
    }
}
