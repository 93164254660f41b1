using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What a series shows next, and when that is planned for.</summary>
internal static class LetterNext
{
    private const int EpisodesTold = 2;

    public static IEnumerable<Block> Blocks(Ledger ledger, Outlook outlook)
    {
        var episodes = ledger.Plan.Episodes.Where(episode => episode.Series == outlook.Series).ToList();
        var first = episodes.Take(EpisodesTold).Select((episode, i) => One(ledger, episode, i == 0));
        return episodes.Count == 0 && outlook.State != SeriesState.Resting ? [Nothing(outlook)] : first;
    }

    private static Block Nothing(Outlook outlook) =>
        Say.Paragraph(Say.From($"Nothing is planned for this series yet.", Fact.Of(outlook)));

    private static Block One(Ledger ledger, PlannedEpisode episode, bool next)
    {
        var when = DateWording.WithEarlyView(episode, ledger);
        var place = next ? "Next" : "Then";
        return Say.Paragraph([
            Say.From($"{place}: {InWords.Quoted(episode.Title)}, {when}.", Fact.Of(episode), Fact.OfWorkshop),
            .. Shows(ledger, episode),
        ]);
    }

    private static IEnumerable<Sentence> Shows(Ledger ledger, PlannedEpisode episode)
    {
        var milestones = ledger.Story.MilestonesOf(episode).ToList();
        var names = InWords.List([.. milestones.Select(milestone => InWords.Quoted(milestone.Name))]);
        var facts = milestones.Select(Fact.Of).Prepend(Fact.Of(episode));
        return milestones.Count == 0 ? [] : [Say.From($"It is meant to show {names}.", facts)];
    }
}
