namespace EpisodePlanner.Planning;

/// <summary>Pins cuts, so that no proposal moves them, and lets them go.</summary>
public static class CutPins
{
    /// <summary>The change that pins an episode's cut or lets it go.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="episode">An episode to come. One that nobody has cut yet is cut as it is where it is pinned.</param>
    /// <param name="isPinned">Whether it is pinned then.</param>
    /// <returns>The change; null where it would change nothing.</returns>
    public static Change? Of(Workshop workshop, PlannedEpisode episode, bool isPinned)
    {
        var now = workshop.Episodes.Find(episode.Id);
        if (now is null && isPinned && workshop.Series.Find(episode.Series) is { } series && episode.Milestones.Count > 0)
        {
            now = CutChanges.New(workshop, series, episode.Milestones);
        }

        return now is null || now.CutPinned == isPinned ? null : new EpisodeChange(now.Id, now with { CutPinned = isPinned });
    }
}
