using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Says how an episode comes from being ready to its slot.</summary>
internal static class PublishWords
{
    private const int MostPassed = 3;

    public static string Of(PublishReason reason, PlannedEpisode episode, PlanNames names)
    {
        var ready = $"it is ready {names.Moment(episode.Ready!.Value)}{Lead(reason, names)}";
        return reason.Pinned
            ? $"it is pinned to this slot; {ready}"
            : $"{ready}, and this is the first {Free(reason)}slot after that{Passed(reason)}";
    }

    private static string Lead(PublishReason reason, PlanNames names)
    {
        string?[] parts =
        [
            reason.SafetyMinutes > 0 ? $"should wait {Words.Minutes(reason.SafetyMinutes)} for safety" : null,
            reason.EarlyViewMinutes > 0 ? $"is shown to supporters {Words.Minutes(reason.EarlyViewMinutes)} early" : null,
            reason.FixesDone is { } done ? $"has its last fixes {names.Moment(done)}" : null,
        ];
        var said = parts.OfType<string>().ToList();
        return said.Count == 0 ? "" : $", {string.Join(", ", said)}";
    }

    private static string Free(PublishReason reason) => reason.Passed.Count > 0 ? "free " : "";

    private static string Passed(PublishReason reason)
    {
        if (reason.Passed.Count == 0)
        {
            return "";
        }

        var more = reason.Passed.Count - MostPassed;
        var said = string.Join(", ", reason.Passed.Take(MostPassed).Select(Say));
        return $" ({said}{(more > 0 ? $", and {more} more are not free" : "")})";
    }

    private static string Say(PassedSlot slot)
    {
        var other = slot.Other is null ? "another upload" : PlanNames.Quote(slot.Other);
        return $"{Words.ShortDay(slot.Opening.Date)} " + slot.Why switch
        {
            PassedSlotReason.Taken => $"goes to {other}",
            PassedSlotReason.DayToAvoid => "is a day to avoid",
            _ => $"is too near to {other}",
        };
    }
}
