namespace EpisodePlanner.Planning;

/// <summary>What was taken for granted about promises, slots and the way from ready to public.</summary>
internal static class PublishingTrials
{
    public static IEnumerable<Trial?> Of(Plan plan)
    {
        var settings = plan.Request.Workshop.Settings;
        var upcoming = plan.Episodes.Count > 0;
        yield return SeriesPromise(plan);
        yield return settings.ChannelPromiseDays is null && upcoming ? ChannelPromise() : null;
        yield return plan.Request.Workshop.SlotRules.Count == 0 && upcoming ? Slots() : null;
        yield return settings.SafetyLeadHours is null && upcoming ? SafetyLead() : null;
        yield return EarlyView(plan);
    }

    private static Trial? SeriesPromise(Plan plan)
    {
        var names = plan.Series.Where(s => s is { PromiseAssumed: true, State: SeriesState.Active }).Select(s => s.Name).ToList();
        return names.Count == 0 ? null : Trial.OfSettings(
            "seriesPromise",
            "seriesPromiseDays",
            $"{Trials.Row(names)} may be silent for {Defaults.SeriesPromiseDays} days",
            "For how many days may a series be silent at most?",
            "14 days",
            settings => settings with { SeriesPromiseDays = 14 });
    }

    private static Trial ChannelPromise() => Trial.OfSettings(
        "channelPromise",
        "channelPromiseDays",
        $"the channel may be silent for {Defaults.ChannelPromiseDays} days",
        "For how many days may the whole channel be silent at most?",
        "14 days",
        settings => settings with { ChannelPromiseDays = 14 });

    private static Trial Slots() => Trial.Of(
        "slots",
        "$.slotRules",
        "you publish on Fridays at 18:00",
        "On which days, and at what time, do you publish?",
        "every day at 18:00",
        workshop => workshop with { SlotRules = [Defaults.Fridays with { Rule = "FREQ=DAILY" }] });

    private static Trial SafetyLead() => Trial.OfSettings(
        "safetyLead",
        "safetyLeadHours",
        "an episode may be ready at the last minute before its slot",
        "How many hours before its slot should an episode be ready?",
        "24 h",
        settings => settings with { SafetyLeadHours = 24 });

    private static Trial? EarlyView(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var isUsed = plan.Episodes.Any(e => workshop.Episodes.Find(e.Id)?.EarlyViewHours is null);
        return workshop.Settings.EarlyViewHours is not null || !isUsed ? null : Trial.OfSettings(
            "earlyView",
            "earlyViewHours",
            "supporters see an episode when everybody does",
            "How many hours earlier may supporters watch?",
            "24 h",
            settings => settings with { EarlyViewHours = 24 });
    }
}
