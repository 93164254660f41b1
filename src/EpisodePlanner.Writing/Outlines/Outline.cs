using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The notes for one episode: what it shows, what led to it, what to film, what is left to do.</summary>
public static class Outline
{
    /// <summary>The outline of an episode to come, or why there is none.</summary>
    /// <param name="plan">The plan; its log and dates are all that is told.</param>
    /// <param name="episode">An id of <see cref="Plan.Episodes"/>.</param>
    public static WriteResult Write(Plan plan, Id episode)
    {
        var found = plan.Episodes.FirstOrDefault(planned => planned.Id == episode);
        if (found is null)
        {
            return new NotWritten([UnknownEpisode.Reason(plan, episode)]);
        }

        var page = Compose(new Ledger(plan), found);
        return new Written(page, MarkdownPage.Write(page));
    }

    private static Page Compose(Ledger ledger, PlannedEpisode episode)
    {
        var shots = new ShotClock(ledger, episode).Shots().ToList();
        return new Page(Markdown.Of($"{episode.Title}"), new Section[]
        {
            OutlineHead.Section(ledger, episode, shots),
            OutlineShots.BeforeItIsGone(ledger, shots),
        }
        .Concat(OutlineStory.Sections(ledger, episode))
        .Concat(OutlineShots.Sections(ledger, shots))
        .Concat(OutlineWork.Sections(ledger, episode))
        .Append(OutlineLines.Section(ledger, episode))
        .Append(OutlineCautions.Section(ledger, episode))
        .ToValueList());
    }
}
