namespace EpisodePlanner.Planning;

/// <summary>What was taken for granted about cuts, tails and payoffs.</summary>
internal static class StoryTrials
{
    public static IEnumerable<Trial?> Of(Plan plan)
    {
        yield return Tail(plan);
        yield return Cut(plan);
        yield return Payoff(plan);
    }

    private static Trial? Tail(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var isUsed = plan.Episodes.Any(e => workshop.Episodes.Find(e.Id) is not { Tail.Count: > 0 });
        return workshop.Settings.Tail.Count > 0 || !isUsed ? null : Trial.OfSettings(
            "tail",
            "tail",
            $"an episode takes {Words.Minutes((int)(Defaults.TailHours * 60))} of work once the build is done (talking to camera, edit, finish)",
            "How many hours does an episode take you once the build is done?",
            "8 h",
            settings => settings with { Tail = [new TailPart { Kind = TailKind.Everything, Hours = 8 }] });
    }

    private static Trial? Cut(Plan plan)
    {
        var uncut = plan.Episodes.Where(e => e.Assumed && e.Milestones.Count > 1).ToList();
        return uncut.Count == 0 ? null : Trial.Of(
            "cut",
            "$.episodes",
            $"what is in no episode yet becomes one more: {Trials.Row([.. uncut.Select(e => e.Title)])}",
            "After which milestone can an episode end?",
            "an episode after the first of its milestones",
            workshop => workshop with { Episodes = workshop.Episodes.Concat(uncut.Select(e => First(workshop, e))).ToKeyed() });
    }

    /// <summary>An episode of the first milestone, under an id that the rest would take and so does not.</summary>
    private static Episode First(Workshop workshop, PlannedEpisode rest) => new()
    {
        Id = rest.Id,
        Title = workshop.Series.Find(rest.Series)!.Milestones.First(m => m.Id == rest.Milestones[0]).Name,
        Series = rest.Series,
        Milestones = [rest.Milestones[0]],
    };

    private static Trial? Payoff(Plan plan)
    {
        var left = plan.Stages.Where(s => s.Key.IsTask).Select(s => s.Key.Task).ToHashSet();
        var isTyped = plan.Request.Workshop.Tasks.Any(t => left.Contains(t.Id) && t.Links.Any(l => l.Assumed));
        return !isTyped ? null : Trial.Of(
            "payoff",
            "$.series[*].milestones[*].payoff",
            "seeing any of the lines done satisfies, so that an episode may end there",
            "Which of the lines only make sense together with a later one?",
            "",
            null);
    }
}
