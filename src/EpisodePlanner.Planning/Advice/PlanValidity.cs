using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>How long a plan stays true while nothing in the workshop changes.</summary>
public static class PlanValidity
{
    /// <summary>
    /// The first moment after planning at which the plan says something else begins (a part of the work, a day or an
    /// upload), so that a plan made then may differ. Work that the plan begins at once is under way until then.
    /// </summary>
    public static Instant Until(Plan plan)
    {
        var now = plan.Request.PlannedAt;
        var midnight = plan.Zone.AtStartOfDay(plan.Now.Date.PlusDays(1)).ToInstant();
        return plan.Stages.SelectMany(stage => stage.Parts).Select(part => part.Start)
            .Concat(plan.Episodes.Select(episode => episode.Publish).OfType<Instant>())
            .Where(moment => moment > now)
            .Append(midnight)
            .Min();
    }
}
