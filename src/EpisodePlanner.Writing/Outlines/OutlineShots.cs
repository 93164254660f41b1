namespace EpisodePlanner.Writing;

/// <summary>The shots: what must be taken before it is gone, what is still to film, what is there, what is lost.</summary>
internal static class OutlineShots
{
    /// <summary>Once-only shots that are still to come, the most urgent first.</summary>
    public static Section BeforeItIsGone(Ledger ledger, IEnumerable<ShotFact> shots) => Say.Section(
        2,
        $"Film before it is gone",
        shots.Where(shot => shot is { Standing: ShotStanding.ToFilm, Shot.OnceOnly: true })
            .OrderBy(shot => shot.End?.At is null)
            .ThenBy(shot => shot.End?.At)
            .Select(shot => ShotWording.ToFilm(shot, ledger)));

    public static IEnumerable<Section> Sections(Ledger ledger, IReadOnlyList<ShotFact> shots) =>
    [
        Say.Section(2, $"Still to film", StillToFilm(ledger, shots)),
        Say.Section(2, $"Pictures taken", With(shots, ShotStanding.Got).Select(ShotWording.Got)),
        Say.Section(2, $"Pictures lost", With(shots, ShotStanding.Lost).Select(shot => ShotWording.Lost(shot, ledger))),
    ];

    private static IEnumerable<Block> StillToFilm(Ledger ledger, IReadOnlyList<ShotFact> shots)
    {
        var coming = With(shots, ShotStanding.ToFilm).Where(shot => !shot.Shot.OnceOnly);
        var again = With(shots, ShotStanding.Again);
        return coming.Select(shot => ShotWording.ToFilm(shot, ledger))
            .Concat(again.Select(shot => ShotWording.Again(shot, ledger)));
    }

    private static IEnumerable<ShotFact> With(IEnumerable<ShotFact> shots, ShotStanding standing) =>
        shots.Where(shot => shot.Standing == standing);
}
