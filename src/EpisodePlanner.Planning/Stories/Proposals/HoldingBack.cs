namespace EpisodePlanner.Planning;

/// <summary>Pins episodes to later slots than the first that is free, where a choice of slots says so.</summary>
internal static class HoldingBack
{
    /// <summary>What is pinned for a candidate's slots; none where the first free slots are as good.</summary>
    public static IReadOnlyList<HeldEpisode> Of(StoryCandidate candidate)
    {
        var (drafted, held) = (candidate.Drafted, new List<HeldEpisode>());
        for (var e = 0; e < candidate.Windows.Count; e++)
        {
            var (given, chosen) = (drafted.Sweep.Windows[e], candidate.Windows[e]);
            if (given >= 0 && chosen > given)
            {
                var upcoming = drafted.Draft.Episodes.Episodes[e].Upcoming;
                held.Add(new HeldEpisode(upcoming, drafted.Draft.Slots[chosen], Pinned(drafted.Draft.Workshop, upcoming, drafted.Draft.Slots[chosen])));
            }
        }

        return held;
    }

    private static EpisodeChange Pinned(Workshop workshop, UpcomingEpisode upcoming, SlotWindow slot)
    {
        var episode = upcoming.Assumed
            ? CutChanges.New(workshop, upcoming.Series, upcoming.Episode.Milestones)
            : upcoming.Episode;
        return new EpisodeChange(episode.Id, episode with { PinnedSlot = slot.LocalOpening });
    }
}

/// <summary>An episode that is held back for a slot.</summary>
/// <param name="Episode">The episode.</param>
/// <param name="Slot">The slot.</param>
/// <param name="Change">What pins it.</param>
internal sealed record HeldEpisode(UpcomingEpisode Episode, SlotWindow Slot, EpisodeChange Change);
