namespace EpisodePlanner.Planning;

/// <summary>What stands between an episode that is ready and its public moment.</summary>
internal static class LooserPublishing
{
    public static IEnumerable<WhatIfIdea> Of(Plan plan, PlannedEpisode episode)
    {
        if (PublishReason.Of(plan, episode) is not { } reason)
        {
            yield break;
        }

        var workshop = plan.Request.Workshop;
        if (reason.Earliest < episode.Publish)
        {
            yield return EveryDay(plan, episode);
        }

        if (reason.SafetyMinutes > 0)
        {
            yield return new WhatIfIdea(
                WhatIfKind.Publishing,
                $"no safety lead, instead of {Words.Minutes(reason.SafetyMinutes)}",
                new SettingsChange(workshop.Settings with { SafetyLeadHours = 0 }));
        }

        if (reason.EarlyViewMinutes > 0)
        {
            yield return NoEarlyView(workshop, episode, reason.EarlyViewMinutes);
        }
    }

    private static WhatIfIdea EveryDay(Plan plan, PlannedEpisode episode)
    {
        var workshop = plan.Request.Workshop;
        var rule = workshop.SlotRules.Find(episode.Slot!.Rule) ?? Defaults.Fridays;
        var daily = rule with
        {
            Id = ThingNames.IdFor("every day", ThingKinds.SlotRules, workshop),
            From = plan.Now.Date,
            Rule = "FREQ=DAILY",
            Except = [],
        };
        return new WhatIfIdea(
            WhatIfKind.Publishing, $"a slot every day at {Words.Time(rule.At)}", new SlotRuleChange(daily.Id, daily));
    }

    private static WhatIfIdea NoEarlyView(Workshop workshop, PlannedEpisode episode, int minutes)
    {
        Change change = workshop.Episodes.Find(episode.Id) is { } cut
            ? new EpisodeChange(cut.Id, cut with { EarlyViewHours = 0 })
            : new SettingsChange(workshop.Settings with { EarlyViewHours = 0 });
        return new WhatIfIdea(WhatIfKind.Publishing, $"no early view, instead of {Words.Minutes(minutes)}", change);
    }
}
