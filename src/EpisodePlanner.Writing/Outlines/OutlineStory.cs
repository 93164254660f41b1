using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The milestones in story order, each with the work that led to it as the log tells it.</summary>
internal static class OutlineStory
{
    public static IEnumerable<Section> Sections(Ledger ledger, PlannedEpisode episode)
    {
        var milestones = ledger.Story.MilestonesOf(episode).ToList();
        yield return Say.Section(2, $"The story", Overview(milestones));
        foreach (var milestone in milestones)
        {
            yield return One(ledger, milestone);
        }
    }

    private static Block Overview(List<Milestone> milestones)
    {
        if (milestones.Count == 0)
        {
            return Say.Paragraph();
        }

        var names = InWords.List([.. milestones.Select(milestone => InWords.Quoted(milestone.Name))]);
        var shows = milestones.Count == 1
            ? Say.From($"It shows {names}.", milestones.Select(Fact.Of))
            : Say.From($"It shows {names}, in this order.", milestones.Select(Fact.Of));
        return Say.Paragraph([shows, .. SpeechWording.Hint(milestones)]);
    }

    private static Section One(Ledger ledger, Milestone milestone)
    {
        var works = ledger.Story.TasksOf(milestone)
            .SelectMany(task => WorkDone.Of(task, ledger))
            .OrderBy(work => work.Entry.At)
            .ThenBy(work => work.Entry.Id)
            .ToList();
        var head = Say.Paragraph([
            MilestoneWording.Payoff(milestone),
            .. MilestoneWording.Screen(milestone),
            .. LogWording.Total(works),
        ]);
        return Say.Section(3, $"{milestone.Name}", [head, .. works.Select(work => LogWording.Line(work, ledger))]);
    }
}
