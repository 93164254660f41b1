namespace EpisodePlanner.Planning;

/// <summary>Finds what of each series is still to be told, and what of it stays as the maker fixed it.</summary>
internal static class StoryLines
{
    /// <summary>The lines of all series that are not finished, in the order of a plan's table.</summary>
    public static IReadOnlyList<StoryLine> Of(PlanDraft draft)
    {
        var upcoming = draft.Episodes.Episodes.Select(row => row.Upcoming).ToLookup(episode => episode.Series.Id);
        return [.. draft.Episodes.Series.Select(row => new StoryLine(row.Series, Units(draft, row.Series, upcoming[row.Series.Id])))];
    }

    /// <summary>
    /// Why an episode stays as it is: its cut or its slot is pinned, a date was told for it, a timed line rides on it, its
    /// tail is begun, or it shows no milestone. Null where it may be cut otherwise.
    /// </summary>
    public static string? Stays(PlanDraft draft, Episode episode)
    {
        var workshop = draft.Workshop;
        return episode.CutPinned ? "its cut is pinned"
            : episode.PinnedSlot is not null ? "it is pinned to a slot"
            : episode.Milestones.Count == 0 ? "it shows no milestone"
            : workshop.ToldDates.Any(told => told.Episode == episode.Id) ? "a date was told for it"
            : workshop.TimedLines.Any(line => line.Episode == episode.Id) ? "a timed line rides on it"
            : IsBegun(draft, episode) ? "its finish is begun"
            : null;
    }

    private static bool IsBegun(PlanDraft draft, Episode episode) => Enumerable.Range(0, Tails.Of(draft.Workshop, episode).Count)
        .Any(part => draft.Progress.Of(StageKey.OfTail(episode.Id, part)).IsStarted);

    private static IReadOnlyList<StoryUnit> Units(PlanDraft draft, Series series, IEnumerable<UpcomingEpisode> upcoming)
    {
        var milestones = series.Milestones.ToDictionary(milestone => milestone.Id);
        var place = series.Milestones.Select((milestone, i) => (milestone.Id, i)).ToDictionary(x => x.Id, x => x.i);
        var units = new List<(int Place, StoryUnit Unit)>();
        foreach (var (episode, order) in upcoming.Select((episode, order) => (episode, order)))
        {
            if (!episode.Assumed && Stays(draft, episode.Episode) is { } why)
            {
                units.Add((Place(episode.Episode, place, order), Stay(episode.Episode, why, milestones)));
                continue;
            }

            units.AddRange(episode.Episode.Milestones.Select(id => (place[id], Free(milestones[id], episode))));
        }

        return [.. units.OrderBy(x => x.Place).Select(x => x.Unit)];
    }

    /// <summary>What shows no milestone goes first, or last where it is pinned to a slot, as in the plan.</summary>
    private static int Place(Episode episode, Dictionary<Id, int> place, int order) => episode.Milestones.Count > 0
        ? episode.Milestones.Min(id => place[id])
        : episode.PinnedSlot is null ? order - place.Count - 1 : int.MaxValue;

    private static StoryUnit Stay(Episode episode, string why, Dictionary<Id, Milestone> milestones) => new()
    {
        Milestones = episode.Milestones.Select(id => milestones[id]).ToValueList(),
        Fixed = episode,
        FixedBy = why,
        Shown = null,
        MayEnd = true,
    };

    private static StoryUnit Free(Milestone milestone, UpcomingEpisode episode) => new()
    {
        Milestones = [milestone],
        Fixed = null,
        FixedBy = null,
        Shown = episode.Assumed ? null : episode.Episode,
        MayEnd = milestone is { Payoff: true, TogetherWithNext: false },
    };
}
