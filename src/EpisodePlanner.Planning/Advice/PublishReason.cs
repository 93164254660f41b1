using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Why a slot that comes after an episode is ready is not the one it goes out in.</summary>
public enum PassedSlotReason
{
    /// <summary>Another episode goes out in it.</summary>
    Taken,

    /// <summary>Another upload of the channel is too near.</summary>
    TooNear,

    /// <summary>Nothing is published on that day.</summary>
    DayToAvoid,
}

/// <summary>A slot that an episode could not take.</summary>
/// <param name="Opening">When it opens, local time.</param>
/// <param name="Why">Why not.</param>
/// <param name="Other">The title of the episode that takes it or is too near; null where there is none.</param>
public sealed record PassedSlot(LocalDateTime Opening, PassedSlotReason Why, string? Other);

/// <summary>How an episode comes from being ready to its public moment.</summary>
public sealed record PublishReason
{
    /// <summary>The maker pinned it to its slot.</summary>
    public required bool Pinned { get; init; }

    /// <summary>Minutes that it should be ready before its slot.</summary>
    public required int SafetyMinutes { get; init; }

    /// <summary>Minutes of early view before the public moment.</summary>
    public required int EarlyViewMinutes { get; init; }

    /// <summary>When the fixes after early view are done, where that is what it waits for; else null.</summary>
    public required Instant? FixesDone { get; init; }

    /// <summary>The moment from which it can go out.</summary>
    public required Instant Earliest { get; init; }

    /// <summary>The slots between <see cref="Earliest"/> and its own.</summary>
    public required ValueList<PassedSlot> Passed { get; init; }

    /// <summary>The reason of an episode with a date.</summary>
    public static PublishReason? Of(Plan plan, PlannedEpisode episode)
    {
        if (episode is not { Ready: { } ready, Slot: { } slot })
        {
            return null;
        }

        var workshop = plan.Request.Workshop;
        var cut = workshop.Episodes.Find(episode.Id);
        var safety = Minutes(workshop.Settings.SafetyLeadHours ?? 0);
        var early = Minutes(cut?.EarlyViewHours ?? workshop.Settings.EarlyViewHours ?? 0);
        var waited = ready + Duration.FromMinutes(safety + early);
        var fixes = plan.Stages.LastOrDefault(stage => stage.Key.Episode == episode.Id && stage.Key.IsTail)?.Finish;
        var earliest = fixes > waited ? fixes.Value : waited;
        return new PublishReason
        {
            Pinned = cut?.PinnedSlot is not null && cut.PinnedSlot == slot.LocalOpening,
            SafetyMinutes = safety,
            EarlyViewMinutes = early,
            FixesDone = fixes > waited ? fixes : null,
            Earliest = earliest,
            Passed = PassedSlots.Between(plan, episode, earliest),
        };
    }

    private static int Minutes(decimal hours) => (int)Math.Ceiling(hours * 60);
}

/// <summary>Looks at the slots that an episode did not get.</summary>
internal static class PassedSlots
{
    public static ValueList<PassedSlot> Between(Plan plan, PlannedEpisode episode, Instant earliest)
    {
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, (int)(plan.Horizon - plan.Request.PlannedAt).TotalMinutes);
        var from = (int)(earliest - plan.Request.PlannedAt).TotalMinutes;
        return SlotWindows.Of(PlanDraft.SlotRulesOf(plan.Request.Workshop), [], axis)
            .Where(window => window.Admits(episode.Series) && window.End > from && window.Opening < episode.Slot!.Opening)
            .Select(window => Of(plan, episode, window))
            .ToValueList();
    }

    private static PassedSlot Of(Plan plan, PlannedEpisode episode, SlotWindow window)
    {
        var settings = plan.Request.Workshop.Settings;
        if (settings.DaysToAvoid.Contains(window.LocalOpening.Date))
        {
            return new PassedSlot(window.LocalOpening, PassedSlotReason.DayToAvoid, null);
        }

        var others = plan.Episodes.Where(other => other.Id != episode.Id && other.Slot is not null).ToList();
        var holder = others.Find(other => other.Slot!.LocalOpening == window.LocalOpening);
        var near = others.Find(other => Days(other.Slot!, window) < (settings.DaysBetweenUploads ?? 0));
        return holder is not null
            ? new PassedSlot(window.LocalOpening, PassedSlotReason.Taken, holder.Title)
            : new PassedSlot(window.LocalOpening, PassedSlotReason.TooNear, near?.Title);
    }

    private static int Days(SlotWindow one, SlotWindow other) =>
        Math.Abs(Period.DaysBetween(one.LocalOpening.Date, other.LocalOpening.Date));
}
