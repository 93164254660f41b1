using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What the episode is and when it is planned for.</summary>
internal static class OutlineHead
{
    public static Section Section(Ledger ledger, PlannedEpisode episode, IReadOnlyList<ShotFact> shots) => Say.Section(
        2,
        $"",
        Say.Paragraph([.. Of(ledger, episode)]),
        Say.Paragraph([When(ledger, episode), .. HowSure(episode)]),
        Say.Paragraph([.. Lost(ledger, shots)]));

    private static IEnumerable<Sentence> Of(Ledger ledger, PlannedEpisode episode)
    {
        var fact = Fact.Of(episode);
        if (ledger.Workshop.Series.Find(episode.Series) is { } series)
        {
            yield return Say.From($"An episode of {InWords.Quoted(series.Name)}, under a working title.", Fact.Of(series), fact);
        }

        if (episode.Assumed)
        {
            yield return Say.From($"Nobody has cut it yet: it holds what no other episode shows.", fact);
        }
    }

    private static Sentence When(Ledger ledger, PlannedEpisode episode) => episode.Publish is null
        ? Say.From($"It has no date in this plan.", Fact.Of(episode))
        : Say.From($"Public: {DateWording.WithEarlyView(episode, ledger)}.", Fact.Of(episode), Fact.OfWorkshop);

    private static IEnumerable<Sentence> HowSure(PlannedEpisode episode) => episode.Publish is null
        ? []
        : [Say.From($"No odds have been computed for this date. It is a plan, not a promise.", Fact.Of(episode))];

    private static IEnumerable<Sentence> Lost(Ledger ledger, IEnumerable<ShotFact> shots)
    {
        var lost = shots.Where(shot => shot is { Standing: ShotStanding.Lost, Shot.Required: true }).ToList();
        var names = InWords.List([.. lost.Select(shot => ShotWording.LostName(shot, ledger))]);
        return lost.Count == 0
            ? []
            : [Say.From($"The cut lacks pictures it needs, and they are lost: {names}.", lost.SelectMany(LostFacts))];
    }

    private static IEnumerable<Fact> LostFacts(ShotFact shot) =>
        shot is { Shot.State: not ShotState.Lost, End.Happened: { } entry } ? [shot.Fact, Fact.Of(entry)] : [shot.Fact];
}
